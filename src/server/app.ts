import cookie from "@fastify/cookie";
import helmet from "@fastify/helmet";
import fastify, { type FastifyInstance } from "fastify";
import { serializerCompiler } from "fastify-type-provider-zod";
import { Refusal } from "../core/refusal.ts";
import type { Bench } from "./bench.ts";
import { checkReplies } from "./check-replies.ts";
import { checkRequest } from "./check-request.ts";
import { guard } from "./guard.ts";
import { replyOf } from "./reply-of.ts";
import { cabinetRoutes } from "./routes/cabinet.ts";
import { calibrationRoutes } from "./routes/calibration.ts";
import { caseRoutes } from "./routes/cases.ts";
import { comparisonRoutes } from "./routes/comparisons.ts";
import { demoRoutes } from "./routes/demo.ts";
import { documentRoutes } from "./routes/documents.ts";
import { doorRoutes } from "./routes/door.ts";
import { dueRoutes } from "./routes/due.ts";
import { filmRoutes } from "./routes/films.ts";
import { pageRoutes } from "./routes/pages.ts";
import { settingsRoutes } from "./routes/settings.ts";
import { toothRoutes } from "./routes/teeth.ts";
import { topicRoutes } from "./routes/topics.ts";
import { whatIfRoutes } from "./routes/what-if.ts";

const megabyte = 1024 * 1024;

/** The server, built and not yet listening; tests ask it without a port. Tells of each route that it lays, if asked. */
export async function buildApp(bench: Bench, onRoute?: (route: string) => void): Promise<FastifyInstance> {
  const app = fastify({ bodyLimit: 16 * megabyte, logger: false, forceCloseConnections: true });
  app.addHook("onRoute", ({ method, url }) => {
    for (const one of [method].flat()) if (one !== "HEAD") onRoute?.(`${one} ${url}`);
  });
  app.setValidatorCompiler(checkRequest);
  app.setSerializerCompiler(serializerCompiler);
  await app.register(cookie);
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives },
    hsts: false,
    crossOriginEmbedderPolicy: true,
  });
  app.addHook("onSend", async (_request, reply) => {
    reply.header("Cache-Control", reply.getHeader("Cache-Control") ?? "no-store");
  });
  guard(app, bench.sessions);
  checkReplies(app);
  app.setErrorHandler((error, _request, reply) => {
    const { status, view } = replyOf(asRefusal(error));
    if (view.code === "bug") console.error(error);
    return reply.status(status).send(view);
  });
  for (const routes of [
    caseRoutes,
    whatIfRoutes,
    filmRoutes,
    comparisonRoutes,
    documentRoutes,
    settingsRoutes,
    cabinetRoutes,
    dueRoutes,
    calibrationRoutes,
    topicRoutes,
    toothRoutes,
    demoRoutes,
    doorRoutes,
    pageRoutes,
  ])
    await routes(app, bench);
  return app;
}

/** Nothing but this server's own pages, code and pictures; wasm for the decoders, no inline code. */
const directives = {
  "default-src": ["'self'"],
  "script-src": ["'self'", "'wasm-unsafe-eval'"],
  "style-src": ["'self'"],
  "img-src": ["'self'", "blob:", "data:"],
  "font-src": ["'self'"],
  "connect-src": ["'self'"],
  "worker-src": ["'self'", "blob:"],
  "object-src": ["'none'"],
  "base-uri": ["'none'"],
  "form-action": ["'self'"],
  "frame-ancestors": ["'none'"],
};

/** What the server library itself refuses (sizes, JSON that can't be read) in the words of the record. */
function asRefusal(error: unknown): unknown {
  if (error instanceof Refusal || !(error instanceof Error)) return error;
  const code: unknown = Reflect.get(error, "code");
  if (code === "FST_ERR_CTP_BODY_TOO_LARGE")
    return new Refusal(
      "server.tooLarge",
      "Cannot take this in: it is larger than this server accepts; nothing was kept",
    );
  const status: unknown = Reflect.get(error, "statusCode");
  if (typeof status === "number" && status >= 400 && status < 500)
    return new Refusal("input.invalid", `Cannot do this: ${error.message}`);
  return error;
}
