import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Short files of long tests: where nothing is known of earlier runs, files are begun by their size, and these came last, each alone. */
const longFor = /\/test\/(faults|differential)\/|\/accessibility\.test\.ts$/;

/** The usual order within each project, but what lasts long is begun first, so that at the end no core waits for it. */
export class LongFilesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const byProject = Map.groupBy(await super.sort(files), ({ project }) => project.name);
    return [...byProject.values()].flatMap((these) => {
      const [long, others] = [true, false].map((isLong) =>
        these.filter(({ moduleId }) => longFor.test(moduleId) === isLong),
      );
      return [...long!, ...others!];
    });
  }
}
