import type { ZipEntry } from '../../zip-stream.ts';
import { notebooksOf, pythonStart, rStart, type Step } from '../notebooks.ts';

const gravities = 'Gravity of each ferment over the days, as read and brought to 20 °C.';
const strengths = 'Strength by the readings up to each moment, with its 90 % interval.';
const warmth = 'How warm it was, in stretches of ten minutes, where a probe was in it.';

const pythonSteps: readonly Step[] = [
  {
    words: 'Run this in the folder `notebooks` of the pack. It needs pandas and matplotlib.',
    code: [...pythonStart, 'print(runs[["run_id", "name", "state", "strength_abv"]])'].join('\n'),
  },
  {
    words: gravities,
    code: [
      'for run_id, run in readings[readings["stands"] == "yes"].groupby("run_id"):',
      '    read = run.dropna(subset=["gravity"])',
      '    plt.step(read["time_h"] / 24, read["gravity"], where="post", label=run_id)',
      'plt.xlabel("Time / d")',
      'plt.ylabel("Gravity")',
      'plt.legend()',
      'plt.show()',
    ].join('\n'),
  },
  {
    words: strengths,
    code: [
      'for run_id, run in pd.read_csv(data / "judged.csv").groupby("run_id"):',
      '    days = run["time_h"] / 24',
      '    plt.plot(days, run["strength_abv"], label=run_id)',
      '    plt.fill_between(days, run["strength_abv_low"], run["strength_abv_high"], alpha=0.2)',
      'plt.xlabel("Time / d")',
      'plt.ylabel("Strength / % vol")',
      'plt.legend()',
      'plt.show()',
    ].join('\n'),
  },
  {
    words: warmth,
    code: [
      'heard = pd.read_csv(data / "warmth.csv")',
      'for run_id, run in heard.groupby("run_id"):',
      '    plt.plot(run["time_h"] / 24, run["mean_degC"], label=run_id)',
      'plt.xlabel("Time / d")',
      'plt.ylabel("Ferment / °C")',
      'plt.show()',
    ].join('\n'),
  },
];

const rSteps: readonly Step[] = [
  {
    words: 'Run this in the folder `notebooks` of the pack. It needs readr and ggplot2.',
    code: [...rStart, 'print(runs[c("run_id", "name", "state", "strength_abv")])'].join('\n'),
  },
  {
    words: gravities,
    code: [
      'read <- subset(readings, stands == "yes" & !is.na(gravity))',
      'print(ggplot(read, aes(time_h / 24, gravity, colour = run_id)) + geom_step() +',
      '  labs(x = "Time / d", y = "Gravity"))',
    ].join('\n'),
  },
  {
    words: strengths,
    code: [
      'judged <- read_csv(file.path(data, "judged.csv"))',
      'print(ggplot(judged, aes(time_h / 24, strength_abv, colour = run_id)) +',
      '  geom_ribbon(aes(ymin = strength_abv_low, ymax = strength_abv_high), alpha = 0.2) +',
      '  geom_line() + labs(x = "Time / d", y = "Strength / % vol"))',
    ].join('\n'),
  },
  {
    words: warmth,
    code: [
      'heard <- read_csv(file.path(data, "warmth.csv"))',
      'print(ggplot(heard, aes(time_h / 24, mean_degC, colour = run_id)) + geom_line() +',
      '  labs(x = "Time / d", y = "Ferment / °C"))',
    ].join('\n'),
  },
];

/** Where an analysis of ferments begins. */
export function fermentNotebooks(): readonly ZipEntry[] {
  return notebooksOf('Ferments', pythonSteps, rSteps);
}
