interface Named {
  readonly id: string;
}

interface Sample {
  readonly count: number;
  readonly seed: string;
}

export function draw(ids: readonly string[], sample: Sample): ReadonlySet<string>;

export const strykerPlugins: readonly {
  readonly kind: 'Checker';
  readonly name: string;
  factory(sample?: Sample): {
    group(mutants: readonly Named[]): Promise<readonly (readonly string[])[]>;
    check(
      mutants: readonly Named[],
    ): Promise<Readonly<Record<string, { readonly status: 'passed' | 'compileError' }>>>;
  };
}[];
