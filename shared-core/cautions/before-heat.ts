import type { Caution } from './caution.ts';

/** What must be right while everything is cold. */
export const beforeHeat = [
  {
    id: 'fill',
    act: 'Strain and degas the ferment, and fill the pot to half at most.',
    because: 'Pulp and gas froth up into the column and out of the rig; a full pot boils over.',
    check: 'The charge is strained and degassed, the pot at most half full',
    places: ['prepare'],
  },
  {
    id: 'boiling-stones',
    act: 'Fresh boiling stones before each heating, into the cold pot.',
    because: 'Used ones no longer work, and any that fall into hot liquid make it boil over.',
    check: 'Fresh boiling stones are in the cold pot',
    places: ['prepare'],
  },
  {
    id: 'open-path',
    act: 'Never close the rig.',
    because:
      'Pressure builds until the glass bursts: vent or receiver adapter stay open to the air.',
    check: 'The way from pot to air is open',
    places: ['prepare'],
  },
  {
    id: 'clips',
    act: 'Clips on every hose and joint.',
    because:
      'A hose that slips off stops the cooling and floods the bench; a joint that opens lets hot vapour out.',
    check: 'Hoses and joints are clipped',
    places: ['prepare'],
  },
  {
    id: 'cooling-water',
    act: 'Cooling water first, heat second.',
    because: 'Without it, flammable vapour leaves the condenser. If it stops: heat off at once.',
    check: 'Cooling water runs: in at the bottom, out at the top',
    places: ['prepare', 'prompt'],
  },
  {
    id: 'ignition',
    act: 'No flame, no spark, fresh air.',
    because:
      'Ethanol vapour is heavier than air, creeps along the bench and catches fire from afar. Heat with a mantle or a bath; where your rules allow a burner all the same, it is out before a receiver is changed.',
    check: 'No flame, no spark around the still; the room is aired',
    places: ['prepare'],
  },
  {
    id: 'receiver-away',
    act: 'The receiver in a tray, away from the heat; board and laptop above spill height and away from it.',
    because: 'The distillate burns, also where it is spilt; boards, laptops and plugs can spark.',
    check: 'Receiver in a tray, away from the heat; board and laptop above spill height',
    places: ['prepare'],
  },
  {
    id: 'drop-heat',
    act: 'Use heat that can be dropped at once.',
    because:
      'A flame is put out; a mantle or bath is lowered or removed, for switched off alone it boils on.',
    check: 'The heat can be dropped at once: flame out, or mantle down',
    places: ['prepare', 'prompt'],
  },
  {
    id: 'mercury',
    act: 'No mercury thermometer where it can be avoided.',
    because:
      'Broken at a hot still it fills the room with poisonous vapour. A glass thermometer filled with spirit tells the head when the probe fails.',
    check: 'A glass thermometer at the head can be read by eye, without mercury if possible',
    places: ['prepare'],
  },
  {
    id: 'bulb',
    act: 'Hang the whole bulb level with the lower edge of the side arm.',
    because:
      'One that hangs higher stays cooler than the vapour: the head seems stronger than it is, and the heat comes off late.',
    check: 'The whole bulb hangs level with the lower edge of the side arm',
    places: ['prepare'],
  },
  {
    id: 'cable',
    act: 'At the head a probe with a metal tip and a PTFE or silicone cable.',
    because: 'Hot ethanol attacks PVC: bare wires in the vapour can spark.',
    places: [],
  },
  {
    id: 'protection',
    act: 'Eye protection on, hair tied back, sleeves close.',
    because: 'Splashes blind, and hair and loose cloth catch fire first: everybody near the bench.',
    check: 'Eye protection on, hair tied back, sleeves close',
    places: ['prepare'],
  },
] as const satisfies readonly Caution[];
