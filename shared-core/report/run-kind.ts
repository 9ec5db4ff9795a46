import type { ExerciseLevel } from '../exercises/index.ts';
import type { Drawing } from '../figures/index.ts';
import type { PrintedDocument } from './document.ts';

/** A drawing by the name it has among a run's others. */
export interface NamedDrawing {
  readonly name: string;
  /** Null where the run has nothing to draw. */
  readonly drawing: Drawing | null;
}

/** What is drawn and printed of a kind of run, from a run of it that was worked through. */
export interface RunKind<Study> {
  /** In the order in which they are numbered. */
  readonly figures: (study: Study) => readonly NamedDrawing[];
  /** All runs over one another. */
  readonly overlay: (studies: readonly Study[]) => Drawing | null;
  readonly report: (studies: readonly Study[]) => PrintedDocument;
  readonly worksheet: (study: Study, level: ExerciseLevel) => PrintedDocument;
  readonly markingSheet: (study: Study, level: ExerciseLevel) => PrintedDocument;
  readonly key: (study: Study) => PrintedDocument;
  readonly groupSheets: (studies: readonly Study[], level: ExerciseLevel) => PrintedDocument;
}
