import type { Parts, Server } from '../parts.ts';
import { candidateRoutes } from './candidates.ts';
import { candidateViewRoutes } from './candidateViews.ts';
import { countRoute } from './count.ts';
import { demonstrationRoute } from './demonstration.ts';
import { distributionsRoute } from './distributions.ts';
import { elementRoute } from './elements.ts';
import { eventRoutes } from './events.ts';
import { evidenceRoute } from './evidence.ts';
import { explainRoute } from './explain.ts';
import { exportRoute } from './exports.ts';
import { healthRoutes } from './health.ts';
import { lateQuantityRoute } from './lateQuantities.ts';
import { openapiRoute } from './openapi.ts';
import { pairRoute } from './pairs.ts';
import { priceRoutes } from './prices.ts';
import { publishedRoute } from './published.ts';
import { quantityRoute } from './quantities.ts';
import { screenRoute } from './screen.ts';
import { searchRoutes } from './searches.ts';
import { substituteRoute } from './substitute.ts';
import { systemRoute } from './systems.ts';
import { weighingRoute } from './weighing.ts';

/** Everything under /api/v1. */
export function routes(app: Server, parts: Parts): void {
  countRoute(app, parts);
  distributionsRoute(app, parts);
  searchRoutes(app, parts);
  eventRoutes(app, parts);
  candidateRoutes(app, parts);
  candidateViewRoutes(app, parts);
  systemRoute(app, parts);
  publishedRoute(app, parts);
  exportRoute(app, parts);
  screenRoute(app, parts);
  explainRoute(app, parts);
  substituteRoute(app, parts);
  weighingRoute(app, parts);
  evidenceRoute(app);
  elementRoute(app, parts);
  pairRoute(app);
  quantityRoute(app);
  lateQuantityRoute(app);
  priceRoutes(app, parts);
  demonstrationRoute(app);
  openapiRoute(app);
  healthRoutes(app, parts);
}
