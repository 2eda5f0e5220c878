import { type ReactNode, useId, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { figureExport, figureImage, saveFile } from './figureExport.ts';
import { OnPaper } from './onPaper.ts';
import './plot.css';
import { WideContent } from '../frame/WideContent.tsx';

interface FigureProps {
  title: string;
  /** what is shown, of how many: stands under the figure and in its files */
  caption: readonly string[];
  /** what the page says elsewhere, as the data that it comes from: stands in the files alone */
  origin?: readonly string[];
  /** what a file of the figure is called, without its ending */
  fileName: string;
  /** the same numbers as a table */
  table?: ReactNode;
  /** what that table is called, if it tells something else than all numbers */
  tableName?: string;
  /** the drawing: one SVG, canvases under it */
  children: ReactNode;
  /** controls of the figure, beside its title */
  tools?: ReactNode;
}

/** A figure with title, caption, its numbers as a table, and its files for a talk or a paper. */
export function Figure({
  title,
  caption,
  origin = [],
  fileName,
  table,
  tableName = 'The numbers as a table',
  children,
  tools,
}: FigureProps) {
  const frame = useRef<HTMLDivElement>(null);
  const [fault, setFault] = useState('');
  const [onPaper, setOnPaper] = useState(false);
  const head = useId();
  // A talk and a paper want it light on white: drawn so for the moment, which no screen shows.
  const drawnOnPaper = () => {
    flushSync(() => setOnPaper(true));
    try {
      return figureExport(frame.current!, { title, caption: [...caption, ...origin] });
    } finally {
      flushSync(() => setOnPaper(false));
    }
  };
  const save = async (format: 'svg' | 'png') => {
    setFault('');
    try {
      const svg = drawnOnPaper();
      const content = format === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : await figureImage(svg);
      saveFile(content, `${fileName}.${format}`);
    } catch (error) {
      setFault(
        `The figure was not saved: ${error instanceof Error ? error.message : error} Load the page again and try once more.`,
      );
    }
  };
  return (
    <figure className="figure" aria-labelledby={head}>
      <div className="row figure-head">
        <h3 id={head}>{title}</h3>
        {tools}
      </div>
      <div ref={frame} className={onPaper ? 'figure-frame on-paper' : 'figure-frame'}>
        <OnPaper value={onPaper}>{children}</OnPaper>
      </div>
      <figcaption className="small quiet">
        {caption.map((line) => (
          <span key={line}>{line} </span>
        ))}
      </figcaption>
      <div className="row figure-tools">
        <span className="small quiet">Save the figure as</span>
        <button
          type="button"
          className="button-plain"
          aria-label={`Save “${title}” as SVG`}
          onClick={() => void save('svg')}
        >
          SVG
        </button>
        <button
          type="button"
          className="button-plain"
          aria-label={`Save “${title}” as PNG`}
          onClick={() => void save('png')}
        >
          PNG
        </button>
        {table ? (
          <details className="figure-table small">
            <summary>{tableName}</summary>
            <WideContent label={`${title}: ${tableName.toLowerCase()}`}>{table}</WideContent>
          </details>
        ) : null}
      </div>
      <p role="alert" className="fault">
        {fault}
      </p>
    </figure>
  );
}
