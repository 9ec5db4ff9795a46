import { Field } from './field.tsx';

interface SelectFieldProps<T extends string> {
  readonly name: string;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly value: T;
  readonly onValue: (value: T) => void;
}

/** One of many: a list that the platform draws. */
export function SelectField<T extends string>(props: SelectFieldProps<T>) {
  const { name, options, value, onValue } = props;
  return (
    <Field name={name}>
      {({ id }) => (
        <select
          id={id}
          className="entry"
          value={value}
          onChange={({ target }) => {
            const chosen = options.find((option) => option.value === target.value);
            if (chosen) onValue(chosen.value);
          }}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
