import type { FastifyInstance, FastifyRequest } from "fastify";
import { Refusal } from "../core/refusal.ts";
import { cookieName, type Sessions } from "./sessions.ts";

/** The names under which this server may be asked for; anything else is a page elsewhere that points here. */
const hosts = /^(127\.0\.0\.1|localhost|\[::1\]):\d+$/;

/** Refuses every request that does not come from a page of this server, opened with its address. */
export function guard(app: FastifyInstance, sessions: Sessions): void {
  app.addHook("onRequest", async (request) => {
    checkHost(request);
    checkOrigin(request);
    if (request.url.startsWith("/api/") && !sessions.isKnown(request.cookies[cookieName]))
      throw forbidden(
        "this browser was not let in, or was closed since; start Canalog again and open the address that it prints",
      );
  });
}

function checkHost(request: FastifyRequest): void {
  if (!hosts.test(request.headers.host ?? "")) throw forbidden("the Host header does not name this machine");
}

function checkOrigin(request: FastifyRequest): void {
  const site = request.headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none" && request.url.startsWith("/api/"))
    throw forbidden("the request comes from another site");
  const origin = request.headers.origin;
  if (origin !== undefined && origin !== `http://${request.headers.host ?? ""}`)
    throw forbidden("the request comes from another origin");
}

const forbidden = (why: string): Refusal => new Refusal("server.forbidden", `Cannot answer: ${why}`);
