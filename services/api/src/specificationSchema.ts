import { searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';

/** The form of a search specification, for the document of the interface. */
export const specificationSchema = searchSpecificationFor({ quantities, elements: symbols }).schema.meta({
  id: 'SearchSpecification',
});
