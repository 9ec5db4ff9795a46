interface FieldProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly problem: string | undefined;
}

type TextKey<Draft> = { [K in keyof Draft]: Draft[K] extends string ? K : never }[keyof Draft];

/** What each field of a draft needs: what stands in it, how it changes, what is wrong with it. */
export function fieldsOf<Draft extends object>(
  draft: Draft,
  onDraft: (draft: Draft) => void,
  problems: { readonly [K in TextKey<Draft>]?: string | undefined },
): (name: TextKey<Draft>) => FieldProps {
  return (name) => ({
    text: String(draft[name]),
    onText: (text) => onDraft({ ...draft, [name]: text }),
    problem: problems[name],
  });
}
