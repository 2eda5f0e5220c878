import { searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { conditions, quantities } from '@tiegel/screening';

/** The form of a search specification, for the document of the interface. */
export const specificationSchema = searchSpecificationFor({
  quantities,
  elements: symbols,
  conditions: Object.values(conditions),
}).schema.meta({ id: 'SearchSpecification' });
