import { randomBytes } from 'node:crypto';
import helmet from '@fastify/helmet';
import { serializerCompiler, type ZodTypeProvider } from '@fastify/type-provider-zod';
import Fastify, { type FastifyBaseLogger } from 'fastify';
import { askToken } from './access/askToken.ts';
import type { Certificate } from './access/certificate.ts';
import { guardRequests } from './access/guardRequests.ts';
import { refuseWhileStopping } from './access/refuseWhileStopping.ts';
import { documentRoutes } from './documentation.ts';
import { servePages } from './pages.ts';
import type { Parts, Server } from './parts.ts';
import { answerError, bodyLimitBytes } from './problems/answerError.ts';
import { answerUnreadable } from './problems/answerUnreadable.ts';
import { readJson } from './problems/readJson.ts';
import { refuseUnknownParameters } from './problems/refuseUnknownParameters.ts';
import { validatorCompiler } from './problems/validatorCompiler.ts';
import { refuseOtherMethods } from './refuseOtherMethods.ts';
import { healthRoutes } from './routes/health.ts';
import { routes } from './routes/routes.ts';

/** For sending a request; an answer may take as long as it likes. */
const slowestRequestMs = 60_000;
/** Ten elements, each with nine decimals, are the longest composition in an address. */
const longestParameter = 300;

/**
 * Builds the service around its parts, ready to listen or to be asked in-process.
 * @param certificate null: plain HTTP
 */
export async function buildServer(
  parts: Parts,
  logger?: FastifyBaseLogger,
  certificate: Certificate | null = null,
): Promise<Server> {
  const app = framework(logger, certificate);
  await hygiene(app, parts);
  await documentRoutes(app);
  refuseUnknownParameters(app);
  const closeMethods = refuseOtherMethods(app);
  await app.register(async (api) => routes(api as Server, parts), { prefix: '/api/v1' });
  healthRoutes(app, parts);
  closeMethods();
  await servePages(app, parts.pages);
  return app;
}

function framework(logger: FastifyBaseLogger | undefined, https: Certificate | null): Server {
  const app = Fastify({
    // Its type would make another kind of server of it, which no route sees anything of.
    ...(https === null ? {} : ({ https: { ...https, minVersion: 'TLSv1.2' } } as object)),
    ...(logger === undefined ? {} : { loggerInstance: logger }),
    bodyLimit: bodyLimitBytes,
    forceCloseConnections: true,
    requestTimeout: slowestRequestMs,
    genReqId: () => randomBytes(6).toString('hex'),
    routerOptions: { maxParamLength: longestParameter },
    // guardRequests answers in the one form of problems, here too.
    http: { requireHostHeader: false },
    // refuseWhileStopping answers in the one form of problems.
    return503OnClosing: false,
    clientErrorHandler: answerUnreadable,
    // An address that cannot be decoded never reaches a route, so the error handler is told by hand.
    frameworkErrors: (error, request, reply) => void answerError(error, request, reply),
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  return app;
}

/** What holds for every request: who may ask, what may be sent, what a browser may do with the answer. */
async function hygiene(app: Server, { hostNames, tokens }: Parts): Promise<void> {
  app.setErrorHandler(answerError);
  app.removeAllContentTypeParsers();
  readJson(app);
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
        formAction: ["'self'"],
      },
    },
    // A browser would hold to it for a name that may be served without TLS another day; whoever wants it has a proxy.
    strictTransportSecurity: false,
  });
  guardRequests(app, { hostNames });
  askToken(app, tokens);
  refuseWhileStopping(app);
}
