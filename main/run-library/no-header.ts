import path from 'node:path';
import { createLogScanner, type Result, type RunSummary, succeed, worded } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { labelsFile, segmentFile, segmentNumber, tornFile } from '../recorder/index.ts';

type WhyNoHeader = 'header-lost' | 'nothing-recorded';

/** A header takes less [bytes]: what is longer was more than a beginning. */
const longestBeginning = 8192;
/** How a header's record begins, and how any does. */
const headerStart = '{"seq":0,';
const recordStart = '{"seq":';

/**
 * Why a run has no header: it was lost, or was never saved. Nothing is recorded before the header is on the disk, so where there is but the
 * beginning of its record, and no other file of the recorder, no reading was ever there. Bytes that begin as no record does are taken for damage:
 * what they were cannot be told.
 */
export async function whyNoHeader(
  files: FileLayer,
  folder: string,
): Promise<Result<WhyNoHeader, FileProblem>> {
  const listed = await files.list(folder);
  if (!listed.ok) return listed;
  const names = listed.value.map(({ name }) => name);
  if (names.some((name) => name === labelsFile || (segmentNumber(name) ?? 1) > 1)) {
    return succeed('header-lost');
  }
  const first = segmentFile(1);
  // It may have been put aside already.
  for (const name of names.filter((one) => one === first || one === tornFile(first, 0))) {
    const bytes = await files.read(path.join(folder, name), 0, longestBeginning + 1);
    if (!bytes.ok) return bytes;
    if (!isBeginningOnly(bytes.value)) return succeed('header-lost');
  }
  return succeed('nothing-recorded');
}

/** Zeros are what file systems leave where a power cut came before the bytes. */
function isBeginningOnly(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes).toString('latin1');
  const start = text.slice(0, headerStart.length);
  const isBeginning = headerStart.startsWith(start) || /^\0+$/.test(start);
  const holdsMore = text.length > longestBeginning || text.lastIndexOf(recordStart) > 0;
  return isBeginning && !holdsMore && createLogScanner().push(text).length === 0;
}

/** Why a run without a header can't be opened: there was none ever, or its record may be whole and only too new. */
export const noHeaderWords = ({ unreadable }: Pick<RunSummary, 'unreadable'>): string =>
  unreadable?.why === 'nothing-recorded'
    ? worded('Nothing was recorded of it: it ended while it was being started.')
    : worded('Its header is damaged or was written by a newer version of this program.');
