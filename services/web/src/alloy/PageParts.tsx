/** The parts of the page below the first screen, by the id of their heads. */
const parts = [
  ['phases', 'Phases'],
  ['competes', 'What competes'],
  ['criteria', 'Published rules'],
  ['strength', 'Strength'],
  ['quantities', 'Quantities'],
  ['weighing', 'Weighed out'],
  ['entropy', 'Entropy'],
  ['words', 'In words'],
  ['hazards-head', 'In handling'],
] as const;

/** Links to the parts of the page. */
export function PageParts() {
  return (
    <nav aria-label="On this page" className="page-parts screen-only">
      {parts.map(([id, name]) => (
        <a key={id} href={`#${id}`}>
          {name}
        </a>
      ))}
    </nav>
  );
}
