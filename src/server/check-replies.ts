import type { FastifyInstance } from "fastify";
import { refusalReply, replySchemas } from "./reply-schemas.ts";

/**
 * Holds every JSON answer of the API to its form before it leaves; one of another form is a fault of the program and goes
 * out as such, never as half a truth.
 */
export function checkReplies(app: FastifyInstance): void {
  app.addHook("preSerialization", async (request, reply, payload) => {
    if (!request.url.startsWith("/api/")) return payload;
    const route = `${request.method} ${request.routeOptions.url ?? ""}`;
    const schema = reply.statusCode >= 400 ? refusalReply : replySchemas[route];
    if (schema === undefined) throw new TypeError(`${route} answers with JSON and has no form for it`);
    const checked = schema.safeParse(payload);
    if (!checked.success) throw new TypeError(`${route} answered in another form: ${checked.error.message}`);
    return payload;
  });
}
