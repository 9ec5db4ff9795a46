import path from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * A mutant is done with at the first test that fails: the quick files come first. Left to itself, Vitest begins with the longest, so that
 * workers beside each other end together; here there is one.
 */
export class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const durationOf = ({ project, moduleId }: TestSpecification) => {
      const key = `${project.name}:${path.posix.relative(this.ctx.config.root, moduleId)}`;
      return this.ctx.cache.getFileTestResults(key)?.duration ?? 0;
    };
    return files.toSorted((a, b) => durationOf(a) - durationOf(b));
  }
}
