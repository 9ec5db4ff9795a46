/** A calculation as it is printed: `250 × 11/100 = 27.5`. */
export interface PrintedCalculation {
  readonly words: string;
  /** What the digits to the left come to. */
  readonly computed: number;
  readonly printed: number;
  /** Half a unit of the last digit printed. */
  readonly rounding: number;
}

const expression = /(?:[\d.\s()[\]×/+−·⁻³²√%]|ln)+$/;

/** Every calculation in a line whose left side is digits alone. */
export function calculationsIn(line: string): readonly PrintedCalculation[] {
  const parts = line.split(' = ');
  return parts.flatMap((left, index) => {
    const right = /^\(?(−?\d+(?:\.(\d+))?)\)?( %(?! vol))?/.exec(parts[index + 1] ?? '');
    const words = (expression.exec(left)?.[0] ?? '').trim();
    if (right === null || !/\d.*[×/+−].*\d/.test(words)) return [];
    const [, digits = '', decimals = '', percent] = right;
    const isShare = percent !== undefined && !words.includes('100');
    return [
      {
        words: `${words} = ${digits}${percent ?? ''}`,
        computed: (isShare ? 100 : 1) * evaluate(words),
        printed: Number(digits.replace('−', '-')),
        rounding: 0.5 * 10 ** -decimals.length,
      },
    ];
  });
}

/** The value of digits with + − × / ln √ ² and brackets. */
export function evaluate(words: string): number {
  const tokens = words.replaceAll('·10⁻³', ' × 0.001').match(/\d+(?:\.\d+)?|ln|[()[\]×/+−√²]/g);
  let at = 0;
  const next = () => tokens?.[at];
  const take = () => tokens?.[at++] ?? '';
  const sum = (): number => {
    let value = product();
    while (next() === '+' || next() === '−') value += take() === '+' ? product() : -product();
    return value;
  };
  const product = (): number => {
    let value = power();
    while (next() === '×' || next() === '/') value *= take() === '×' ? power() : 1 / power();
    return value;
  };
  const power = (): number => {
    const value = single();
    if (next() !== '²') return value;
    take();
    return value ** 2;
  };
  const single = (): number => {
    const token = take();
    if (token === '−') return -power();
    if (token === 'ln') return Math.log(power());
    if (token === '√') return Math.sqrt(power());
    if (token !== '(' && token !== '[') return Number(token);
    const inner = sum();
    take();
    return inner;
  };
  return sum();
}
