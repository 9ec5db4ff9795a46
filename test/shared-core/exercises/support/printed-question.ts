import type { Exercise } from '../../../../shared-core/exercises/exercise.ts';

/** All there is to a question, a line each, in the order of sheet and key; spaces that do not break as `~`. */
export function printedQuestion(question: Exercise | null): readonly string[] {
  if (question === null) return [];
  const { id, level, title, marks, answerLines, figure, solvedFigure, answer } = question;
  const lines = [
    `${id} (${level}): ${title} [${marks} marks, ${answerLines} lines${figure === null ? '' : ', to draw on'}${solvedFigure === null ? '' : ', solved'}]`,
    question.question,
    ...question.given.map((words) => `- ${words}`),
    `= ${answer.words}`,
    ...answer.quantities.map(
      ({ of, value, tolerance, unit }) => `  ${of}: ${value} ± ${tolerance} ${unit}`,
    ),
    ...question.working.map((words) => `> ${words}`),
  ];
  return lines.map((line) => line.replaceAll('\u00a0', '~').trimEnd());
}
