import type { ZipEntry } from '../zip-stream.ts';

/** A step of a notebook: what is to be seen, and how it is done. */
export interface Step {
  readonly words: string;
  readonly code: string;
}

/** Where every notebook in Python begins. */
export const pythonStart = [
  'from pathlib import Path',
  'import pandas as pd',
  'import matplotlib.pyplot as plt',
  '',
  'data = Path("..") / "data"',
  'runs = pd.read_csv(data / "runs.csv")',
  'readings = pd.read_csv(data / "readings.csv")',
];

/** Where every notebook in R begins. */
export const rStart = [
  'library(readr)',
  'library(ggplot2)',
  'data <- file.path("..", "data")',
  'runs <- read_csv(file.path(data, "runs.csv"))',
  'readings <- read_csv(file.path(data, "readings.csv"))',
];

const plot = 'Head temperature of each run, from the table of means.';
const volumes = 'Head temperature against the distillate, where volumes are known.';

const pythonSteps: readonly Step[] = [
  {
    words: 'Run this in the folder `notebooks` of the pack. It needs pandas and matplotlib.',
    code: [
      ...pythonStart,
      'measurements = pd.read_csv(data / "measurements.csv")',
      'print(runs[["run_id", "name", "main_fraction"]])',
    ].join('\n'),
  },
  {
    words: plot,
    code: [
      'for file in sorted((data / "processed").glob("*.csv")):',
      '    processed = pd.read_csv(file)',
      '    plt.plot(processed["time_s"] / 60, processed["head_degC"], label=file.stem)',
      'plt.xlabel("Time / min")',
      'plt.ylabel("Head temperature / °C")',
      'plt.legend()',
      'plt.show()',
    ].join('\n'),
  },
  {
    words: volumes,
    code: [
      'by_volume = data / "by-volume.csv"',
      'if by_volume.exists():',
      '    for run_id, run in pd.read_csv(by_volume).groupby("run_id"):',
      '        plt.plot(run["volume_mL"], run["head_degC"], label=str(run_id))',
      '        plt.plot(run["volume_mL"], run["simple_degC"], "--", label="simple still")',
      '    plt.xlabel("Distillate / mL")',
      '    plt.ylabel("Head temperature / °C")',
      '    plt.legend()',
      '    plt.show()',
    ].join('\n'),
  },
  {
    words: 'What was measured by hand, with its standard uncertainty (k = 1).',
    code: 'print(measurements[["of", "quantity", "value", "standard_uncertainty", "unit"]])',
  },
];

const rSteps: readonly Step[] = [
  {
    words: 'Run this in the folder `notebooks` of the pack. It needs readr and ggplot2.',
    code: [
      ...rStart,
      'measurements <- read_csv(file.path(data, "measurements.csv"))',
      'print(runs[c("run_id", "name", "main_fraction")])',
    ].join('\n'),
  },
  {
    words: plot,
    code: [
      'for (file in list.files(file.path(data, "processed"), "csv$", full.names = TRUE)) {',
      '  processed <- read_csv(file)',
      '  print(ggplot(processed, aes(time_s / 60, head_degC)) + geom_line() +',
      '    labs(title = basename(file), x = "Time / min", y = "Head temperature / °C"))',
      '}',
    ].join('\n'),
  },
  {
    words: volumes,
    code: [
      'by_volume <- file.path(data, "by-volume.csv")',
      'if (file.exists(by_volume)) {',
      '  volumes <- read_csv(by_volume)',
      '  print(ggplot(volumes, aes(volume_mL, head_degC, colour = run_id)) + geom_line() +',
      '    geom_line(aes(y = simple_degC), linetype = "dashed") +',
      '    labs(x = "Distillate / mL", y = "Head temperature / °C"))',
      '}',
    ].join('\n'),
  },
  {
    words: 'What was measured by hand, with its standard uncertainty (k = 1).',
    code: 'print(measurements[c("of", "quantity", "value", "standard_uncertainty", "unit")])',
  },
];

/** A notebook to start from in each of the two languages that classes use; both read the pack as it is. */
export function notebooks(): readonly ZipEntry[] {
  return notebooksOf('Distillation runs', pythonSteps, rSteps);
}

/** The same of other steps. */
export function notebooksOf(
  title: string,
  python: readonly Step[],
  r: readonly Step[],
): readonly ZipEntry[] {
  return [
    { path: 'notebooks/start-python.ipynb', content: [jupyter(python)] },
    { path: 'notebooks/start-r.Rmd', content: [rMarkdown(title, r)] },
  ];
}

/** Source: the notebook format 4.5 of Jupyter, whose cells carry an id. */
function jupyter(steps: readonly Step[]): string {
  const lines = (text: string) => text.split(/(?<=\n)/);
  const cells = steps.flatMap(({ words, code }, index) => [
    { cell_type: 'markdown', id: `words-${index}`, metadata: {}, source: lines(words) },
    {
      cell_type: 'code',
      id: `code-${index}`,
      metadata: {},
      execution_count: null,
      outputs: [],
      source: lines(code),
    },
  ]);
  const metadata = {
    kernelspec: { display_name: 'Python 3', language: 'python', name: 'python3' },
    language_info: { name: 'python' },
  };
  return `${JSON.stringify({ cells, metadata, nbformat: 4, nbformat_minor: 5 }, null, 1)}\n`;
}

function rMarkdown(title: string, steps: readonly Step[]): string {
  const blocks = steps.map(({ words, code }) => `${words}\n\n\`\`\`{r}\n${code}\n\`\`\`\n`);
  return `---\ntitle: "${title}"\noutput: html_document\n---\n\n${blocks.join('\n')}`;
}
