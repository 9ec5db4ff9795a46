import type { Result } from '#shared-core';
import type { FileProblem } from './file-problem.ts';

type Answer<T> = Result<T, FileProblem>;

/** A file open for adding at its end. Once closed it fails; closing it again does nothing. */
export interface AppendFile {
  /**
   * Sends bytes on their way behind those before them; answers how many were taken, which may be fewer than given. It never waits: a disk,
   * a virus scanner or a network drive may hold a write for a minute. Whether the bytes arrived, the next sync tells; they must not be changed until then.
   */
  write(bytes: Uint8Array): Answer<number>;
  /** After it, the bytes written before it survive the end of this process and a loss of power; fails where one of them was not taken. */
  sync(): Promise<Answer<void>>;
  /** Once what was written is handed over. */
  close(): Promise<void>;
}

/** What the system tells of a file without its being read. */
export interface FileState {
  readonly bytes: number;
  /** Another text whenever the file was written to, or another one was put in its place. */
  readonly changed: string;
}

export interface FolderEntry {
  readonly name: string;
  readonly isFolder: boolean;
}

/** What the recorder and the run library need of a file system; a parameter, so tests can fail it. Nothing of it is answered in the turn that asks: a disk may hold any of it. */
export interface FileLayer {
  /** Makes the folder and those above it; being there already is fine. */
  makeFolder(path: string): Promise<Answer<void>>;
  /** Makes a folder that is nobody else's; fails with `exists` when there is one. */
  claimFolder(path: string): Promise<Answer<void>>;
  /** Makes a folder where the system keeps what nobody needs for long; answers its path, which begins with `name`. */
  makeTemporaryFolder(name: string): Promise<Answer<string>>;
  /** Fails with `exists` when there is such a file. */
  createAppend(path: string): Promise<Answer<AppendFile>>;
  /** Fails with `missing` when there is no such file. */
  openAppend(path: string): Promise<Answer<AppendFile>>;
  /** Makes the names in a folder survive a loss of power. */
  syncFolder(path: string): Promise<Answer<void>>;
  list(path: string): Promise<Answer<readonly FolderEntry[]>>;
  sizeBytes(path: string): Promise<Answer<number>>;
  stateOf(path: string): Promise<Answer<FileState>>;
  /** At most `length` bytes from `offset`; fewer only at the end of the file. */
  read(path: string, offset: number, length: number): Promise<Answer<Uint8Array>>;
  /** Replaces `to` if it is there, at one stroke. */
  rename(from: string, to: string): Promise<Answer<void>>;
  remove(path: string): Promise<Answer<void>>;
  /** Cuts a file to `length` bytes and syncs it. */
  truncate(path: string, length: number): Promise<Answer<void>>;
  freeBytes(path: string): Promise<Answer<number>>;
}
