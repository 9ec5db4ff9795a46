import { type Caution, cautionGroups, commonPractice } from '#shared-core';

const begins =
  '<!-- Made from shared-core/cautions by: npx tsx scripts/check-cautions.ts --write -->';
const ends = '<!-- End of the cautions -->';
const columns = 110;

/** The Cautions section of README.md, from the list that the window, the report and the worksheets are made from. */
export function readmeCautions(): string {
  const groups = cautionGroups.map(({ title, cautions }) =>
    [`### ${title}`, '', ...cautions.flatMap(itemLines)].join('\n'),
  );
  return [...groups, commonPractice].join('\n\n');
}

/** README.md with its Cautions section made anew; null where the marks around it are missing. */
export function withCautions(readme: string): string | null {
  const from = readme.indexOf(begins);
  const to = readme.indexOf(ends);
  if (from < 0 || to < from) return null;
  return `${readme.slice(0, from)}${begins}\n\n${readmeCautions()}\n\n${readme.slice(to)}`;
}

function itemLines({ act, because, source }: Caution): readonly string[] {
  const text = `**${act}** ${because}${source === undefined ? '' : ` Source: ${source}.`}`;
  const lines: string[] = [];
  let line = '-';
  for (const word of text.split(' ')) {
    if (line.length + 1 + word.length > columns) {
      lines.push(line);
      line = ' ';
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
