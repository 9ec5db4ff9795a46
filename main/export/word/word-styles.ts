import {
  AlignmentType,
  BorderStyle,
  type IPropertiesOptions,
  LevelFormat,
  LineRuleType,
} from 'docx';

export const captionStyle = 'still-caption';
export const cautionStyle = 'still-caution';
export const numberedList = 'still-numbers';

/** A4 with margins of 20 mm, in twentieths of a point (1 mm is 56.69 of them). */
const pageTwip = { width: 11_906, height: 16_838 } as const;
const marginTwip = 1134;
export const contentWidthTwip = pageTwip.width - 2 * marginTwip;

export const pageProperties = {
  page: {
    size: pageTwip,
    margin: { top: marginTwip, bottom: marginTwip, left: marginTwip, right: marginTwip },
  },
} as const;

/** By its outline level a word processor and a screen reader know a heading; the name of its style is not enough. */
const heading = (outlineLevel: number, halfPoints: number) => ({
  run: { size: halfPoints, bold: true, color: '1A1A1A' },
  paragraph: { spacing: { before: 240, after: 80 }, keepNext: true, outlineLevel },
});

/** Named styles, so that whoever goes on writing changes the looks in one place; cautions have a bar at the left, seen without colour. */
export const wordStyles: Pick<IPropertiesOptions, 'styles' | 'numbering'> = {
  styles: {
    default: {
      document: {
        run: { font: 'Arial', size: 20, language: { value: 'en-GB' } },
        paragraph: { spacing: { after: 120, line: 276, lineRule: LineRuleType.AUTO } },
      },
      title: { run: { size: 40, bold: true }, paragraph: { spacing: { after: 60 } } },
      heading1: heading(0, 30),
      heading2: heading(1, 24),
      heading3: heading(2, 23),
    },
    paragraphStyles: [
      {
        id: captionStyle,
        name: 'Caption of a table or figure',
        run: { size: 18, bold: true, color: '444444' },
      },
      {
        id: cautionStyle,
        name: 'Caution',
        run: { bold: true },
        paragraph: {
          indent: { left: 200 },
          border: { left: { style: BorderStyle.SINGLE, size: 24, color: '882255', space: 8 } },
        },
      },
    ],
  },
  numbering: {
    config: [
      {
        reference: numberedList,
        levels: [
          {
            level: 0,
            format: LevelFormat.DECIMAL,
            text: '%1.',
            alignment: AlignmentType.START,
            style: { paragraph: { indent: { left: 400, hanging: 400 } } },
          },
        ],
      },
    ],
  },
};
