import { worded } from '../wording/index.ts';
import type { Caution } from './caution.ts';

/** What must be right while everything is cold. */
export const beforeHeat = [
  {
    id: 'fill',
    act: worded('Strain and degas the ferment, and fill the pot to half at most.'),
    because: worded(
      'Pulp and gas froth up into the column and out of the rig; a full pot boils over.',
    ),
    check: worded('The charge is strained and degassed, the pot at most half full'),
    places: ['prepare'],
  },
  {
    id: 'boiling-stones',
    act: worded('Fresh boiling stones before each heating, into the cold pot.'),
    because: worded(
      'Used ones no longer work, and any that fall into hot liquid make it boil over.',
    ),
    check: worded('Fresh boiling stones are in the cold pot'),
    places: ['prepare'],
  },
  {
    id: 'open-path',
    act: worded('Never close the rig.'),
    because: worded(
      'Pressure builds until the glass bursts: vent or receiver adapter stay open to the air.',
    ),
    check: worded('The way from pot to air is open'),
    places: ['prepare'],
  },
  {
    id: 'clips',
    act: worded('Clips on every hose and joint.'),
    because: worded(
      'A hose that slips off stops the cooling and floods the bench; a joint that opens lets hot vapour out.',
    ),
    check: worded('Hoses and joints are clipped'),
    places: ['prepare'],
  },
  {
    id: 'cooling-water',
    act: worded('Cooling water first, heat second.'),
    because: worded(
      'Without it, flammable vapour leaves the condenser. If it stops: heat off at once.',
    ),
    check: worded('Cooling water runs: in at the bottom, out at the top'),
    places: ['prepare', 'prompt'],
  },
  {
    id: 'ignition',
    act: worded('No flame, no spark, fresh air.'),
    because: worded(
      'Ethanol vapour is heavier than air, creeps along the bench and catches fire from afar. Heat with a mantle or a bath; where your rules allow a burner all the same, it is out before a receiver is changed.',
    ),
    check: worded('No flame, no spark around the still; the room is aired'),
    places: ['prepare'],
  },
  {
    id: 'receiver-away',
    act: worded(
      'The receiver in a tray, away from the heat; board and laptop above spill height and away from it.',
    ),
    because: worded(
      'The distillate burns, also where it is spilt; boards, laptops and plugs can spark.',
    ),
    check: worded('Receiver in a tray, away from the heat; board and laptop above spill height'),
    places: ['prepare'],
  },
  {
    id: 'drop-heat',
    act: worded('Use heat that can be dropped at once.'),
    because: worded(
      'A flame is put out; a mantle or bath is lowered or removed, for switched off alone it boils on.',
    ),
    check: worded('The heat can be dropped at once: flame out, or mantle down'),
    places: ['prepare', 'prompt'],
  },
  {
    id: 'mercury',
    act: worded('No mercury thermometer where it can be avoided.'),
    because: worded(
      'Broken at a hot still it fills the room with poisonous vapour. A glass thermometer filled with spirit tells the head when the probe fails.',
    ),
    check: worded(
      'A glass thermometer at the head can be read by eye, without mercury if possible',
    ),
    places: ['prepare'],
  },
  {
    id: 'bulb',
    act: worded('Hang the whole bulb level with the lower edge of the side arm.'),
    because: worded(
      'One that hangs higher stays cooler than the vapour: the head seems stronger than it is, and the heat comes off late.',
    ),
    check: worded('The whole bulb hangs level with the lower edge of the side arm'),
    places: ['prepare'],
  },
  {
    id: 'cable',
    act: worded('At the head a probe with a metal tip and a PTFE or silicone cable.'),
    because: worded('Hot ethanol attacks PVC: bare wires in the vapour can spark.'),
    places: [],
  },
  {
    id: 'protection',
    act: worded('Eye protection on, hair tied back, sleeves close.'),
    because: worded(
      'Splashes blind, and hair and loose cloth catch fire first: everybody near the bench.',
    ),
    check: worded('Eye protection on, hair tied back, sleeves close'),
    places: ['prepare'],
  },
] as const satisfies readonly Caution[];
