import { Link, useParams } from 'wouter';
import { AlloysView } from '../data/alloys/AlloysView.tsx';
import { DataLinks } from '../data/DataLinks.tsx';
import '../data/data.css';
import { ElementsView } from '../data/elements/ElementsView.tsx';
import { OneElement } from '../data/elements/OneElement.tsx';
import { ImportForm } from '../data/imports/ImportForm.tsx';
import { ImportsView } from '../data/imports/ImportsView.tsx';
import { OneImport } from '../data/imports/OneImport.tsx';
import { MaterialsView } from '../data/materials/MaterialsView.tsx';
import { OverviewView } from '../data/overview/OverviewView.tsx';
import { PairsView } from '../data/pairs/PairsView.tsx';
import { PricesView } from '../data/prices/PricesView.tsx';
import { DataVersionsView } from '../data/versions/DataVersionsView.tsx';

/** What the program knows and from where: elements, pairs, prices, alloys, materials, and what somebody brought in. */
export function DataPage() {
  const { '*': path = '' } = useParams<{ '*': string }>();
  const [part = '', item = ''] = path.split('/').map(decodeURIComponent);
  return (
    <div className="column data-page">
      <header className="look-head">
        <h1 className="data-title">Data</h1>
        <DataLinks part={part} />
      </header>
      {viewOf(part, item)}
    </div>
  );
}

function viewOf(part: string, item: string) {
  switch (part) {
    case '':
      return <OverviewView />;
    case 'elements':
      return item === '' ? <ElementsView /> : <OneElement symbol={item} />;
    case 'pairs':
      return <PairsView />;
    case 'prices':
      return <PricesView />;
    case 'alloys':
      return <AlloysView />;
    case 'materials':
      return <MaterialsView />;
    case 'imports':
      if (item === '') return <ImportsView />;
      return item === 'new' ? <ImportForm /> : <OneImport number={item} />;
    case 'versions':
      return <DataVersionsView />;
    default:
      return (
        <p className="note note-warning" role="alert">
          The data have no part “{part}”. <Link href="/data">What there is</Link>
        </p>
      );
  }
}
