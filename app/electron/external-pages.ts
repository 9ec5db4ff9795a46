/**
 * The only addresses the desktop shell ever hands to the system's browser, all named in the help menu: where
 * the published numbers come from.
 */
export const externalPages = {
  alcoholTables: 'https://www.oiml.org/en/files/pdf_r/r022-e75.pdf',
  uncertainty: 'https://www.bipm.org/en/committees/jc/jcgm/publications',
} as const;

export type ExternalPage = keyof typeof externalPages;
