import type { ReactNode } from 'react';

/** What it is called: by a text, or by the heading with this id. */
type Name = { label: string } | { labelledBy: string };

/** What may be wider than the page scrolls sideways by itself. It takes the focus: keys could not scroll it otherwise. */
export function WideContent({ children, ...name }: Name & { children: ReactNode }) {
  return (
    <section
      className="scroll-x"
      aria-label={'label' in name ? name.label : undefined}
      aria-labelledby={'labelledBy' in name ? name.labelledBy : undefined}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
      tabIndex={0}
    >
      {children}
    </section>
  );
}
