import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { changedFiles, gitIn } from '../../../../scripts/testing/near/changed-files.ts';
import { temporaryFolder } from '../../../main/support/temporary-folder.ts';

/** A project with one commit on `main`, on a branch of its own. */
async function project() {
  const folder = await temporaryFolder();
  const git = gitIn(folder);
  const write = (name: string) => writeFileSync(path.join(folder, name), `${name} ${Math.PI}\n`);
  const commit = async () => {
    await git(['add', '.']);
    const who = ['-c', 'user.name=A', '-c', 'user.email=a@example.org'];
    await git([...who, 'commit', '--quiet', '--message', 'A step']);
  };
  await git(['init', '--quiet', '--initial-branch', 'main']);
  write('first.ts');
  await commit();
  await git(['checkout', '--quiet', '-b', 'work']);
  return { git, write, commit };
}

test('counts from the last commit, new files with it, and else from where the branch left main', async () => {
  const { git, write, commit } = await project();
  write('second.ts');
  await commit();
  const committed = await changedFiles(null, git);
  write('third.ts');
  const uncommitted = await changedFiles(null, git);
  const all = await changedFiles('main', git);
  expect([committed?.files, uncommitted?.files, all?.files]).toEqual([
    ['second.ts'],
    ['third.ts'],
    ['second.ts', 'third.ts'],
  ]);
});

test('says nothing of a commit that is not there', async () => {
  const { git } = await project();
  expect(await changedFiles('nowhere', git)).toBeNull();
});
