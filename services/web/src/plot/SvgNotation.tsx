/** Text inside an SVG with what follows an underscore set low, as Notation does in a page: T_m, Δχ_A. */
export function SvgNotation({ text }: { text: string }) {
  const [start, ...parts] = text.split('_');
  return (
    <>
      {start}
      {parts.map((part, index) => {
        const low = /^[\p{L}\p{N}]+/u.exec(part)?.[0] ?? '';
        return [
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a fixed text never change places
          <tspan key={`low ${index}`} dy={3} className="axis-low">
            {low}
          </tspan>,
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <tspan key={`rest ${index}`} dy={-3}>
            {part.slice(low.length)}
          </tspan>,
        ];
      })}
    </>
  );
}
