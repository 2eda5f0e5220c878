/**
 * `npm start`: checks the runtime, builds the pages where their sources have changed, and becomes
 * the server, which prints its address last.
 */
import { buildPages } from './buildPages.ts';

const leastNode = 24;

function checkRuntime(): void {
  if (Number.parseInt(process.versions.node, 10) >= leastNode) return;
  console.error(
    `This is Node ${process.versions.node}; Node ${leastNode} or later is needed. The project brings its own for ` +
      'the usual systems (npm run setup installs it); for others, install it from nodejs.org.',
  );
  process.exit(1);
}

function buildPagesOrEnd(): void {
  try {
    buildPages();
  } catch (error) {
    console.error((error as Error).message);
    process.exit(2);
  }
}

checkRuntime();
buildPagesOrEnd();
await import('../services/api/src/main.ts');
