import fastifyStatic from "@fastify/static";
import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import type { Bench } from "../bench.ts";
import { cookieName } from "../sessions.ts";

/** The built pages; the printed address's code becomes a cookie here, and every room's address gives the same page. */
export async function pageRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const open = z.object({ code: z.string().max(100) });
  app.get("/open", { schema: { querystring: open } }, (request, reply) => {
    const token = bench.sessions.redeem(request.query.code);
    if (token !== undefined) reply.setCookie(cookieName, token, { httpOnly: true, sameSite: "strict", path: "/" });
    return reply.redirect("/", 303);
  });
  if (bench.pages === undefined) return;
  await app.register(fastifyStatic, { root: bench.pages, setHeaders: cacheHashed, cacheControl: false });
  app.setNotFoundHandler((request, reply) => {
    if (request.method !== "GET" || request.url.startsWith("/api/"))
      return reply
        .status(404)
        .send({ code: "record.notFound", message: "Cannot find this address", facts: {}, faults: [] });
    return reply.sendFile("index.html");
  });
}

/** Files whose name carries their hash never change. */
function cacheHashed(reply: { header: (name: string, value: string) => unknown }, path: string): void {
  if (path.includes("/assets/")) reply.header("Cache-Control", "public, max-age=31536000, immutable");
}
