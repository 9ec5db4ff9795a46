import { useId } from 'react';

interface ChoiceFieldProps<T extends string> {
  readonly name: string;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  /** Null where none of them was chosen yet. */
  readonly value: T | null;
  readonly onValue: (value: T) => void;
  readonly isNameHidden?: boolean;
}

/** One of a few, all in sight: a radio group drawn as a row of pills. */
export function ChoiceField<T extends string>(props: ChoiceFieldProps<T>) {
  const { name, options, value, onValue, isNameHidden = false } = props;
  const group = useId();
  return (
    <fieldset className="field">
      <legend className={isNameHidden ? 'unseen' : 'field-name'}>{name}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="radio"
              name={group}
              checked={option.value === value}
              onChange={() => onValue(option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
