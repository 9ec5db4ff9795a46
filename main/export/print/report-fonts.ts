import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const folder = '@expo-google-fonts/source-sans-3';

/**
 * Font files for PDF and PNG: whole TrueType files with Greek and mathematical signs. The window's own typeface
 * comes as web fonts cut to Latin, which neither printer can use.
 */
export const reportFonts = {
  family: 'Source Sans 3',
  regular: outsideArchive(require.resolve(`${folder}/400Regular/SourceSans3_400Regular.ttf`)),
  bold: outsideArchive(require.resolve(`${folder}/700Bold/SourceSans3_700Bold.ttf`)),
} as const;

/** In a packaged program native code can't look into the archive; what it opens lies unpacked beside it. */
export function outsideArchive(file: string): string {
  return file.replace(/([\\/])app\.asar([\\/])/, '$1app.asar.unpacked$2');
}
