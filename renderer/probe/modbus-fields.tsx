import { say } from '#shared-core';
import { Button, NumberField, SelectField } from '../design/index.ts';
import { channelOptions } from './channel-roles.ts';
import {
  functionOptions,
  type ModbusDraft,
  type ModbusProblems,
  mostRegisters,
  type RegisterDraft,
  registerTypeOptions,
  usualRegister,
} from './modbus-draft.ts';

interface ModbusFieldsProps {
  readonly draft: ModbusDraft;
  readonly problems: ModbusProblems;
  readonly onDraft: (draft: ModbusDraft) => void;
}

/** Where a Modbus probe keeps its numbers. */
export function ModbusFields({ draft, problems, onDraft }: ModbusFieldsProps) {
  const change = (changes: Partial<ModbusDraft>) => onDraft({ ...draft, ...changes });
  const changeRegister = (index: number, changes: Partial<RegisterDraft>) =>
    change({
      registers: draft.registers.map((register, at) =>
        at === index ? { ...register, ...changes } : register,
      ),
    });
  return (
    <>
      <NumberField
        name={say('Its address on the bus')}
        unit=""
        text={draft.unitId}
        problem={problems.unitId}
        onText={(unitId) => change({ unitId })}
      />
      <SelectField
        name={say('Function it answers')}
        options={functionOptions}
        value={draft.functionCode}
        onValue={(functionCode) => change({ functionCode })}
      />
      {draft.registers.map((register, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: registers are told apart by their place alone
        <fieldset key={index} className="register field-wide">
          <legend className="field-name">{say('Register {index}', { index: index + 1 })}</legend>
          <div className="speech">
            <SelectField
              name={say('It measures')}
              options={channelOptions}
              value={register.channel}
              onValue={(channel) => changeRegister(index, { channel })}
            />
            <NumberField
              name={say('Register address')}
              unit={say('from 0')}
              text={register.address}
              problem={problems[`address ${index}`]}
              onText={(address) => changeRegister(index, { address })}
            />
            <SelectField
              name={say('Written as')}
              options={registerTypeOptions}
              value={register.type}
              onValue={(type) => changeRegister(index, { type })}
            />
            <NumberField
              name={say('One step is')}
              unit={say('of its unit')}
              text={register.scale}
              problem={problems[`scale ${index}`]}
              onText={(scale) => changeRegister(index, { scale })}
            />
            {draft.registers.length > 1 && (
              <Button
                weight="quiet"
                onClick={() =>
                  change({ registers: draft.registers.filter((_, at) => at !== index) })
                }
              >
                {say('Leave register {index} out', { index: index + 1 })}
              </Button>
            )}
          </div>
        </fieldset>
      ))}
      {draft.registers.length < mostRegisters && (
        <Button
          weight="quiet"
          onClick={() =>
            change({ registers: [...draft.registers, { ...usualRegister, channel: 'pot' }] })
          }
        >
          {say('One more register')}
        </Button>
      )}
    </>
  );
}
