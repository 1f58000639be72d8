import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { dueCalendar } from "../../export/calendar/due-calendar.ts";
import { caseMark } from "../../record/case-mark.ts";
import { day } from "../../record/values.ts";
import type { DueView } from "../api.ts";
import type { Bench } from "../bench.ts";

/** Seen from the day where the person is; the server's own clock may stand in another zone. */
const seenFrom = z.strictObject({ today: day, until: day.optional() });
const withDemo = seenFrom.extend({ demo: z.enum(["with", "without"]).default("without") });

/** What is due in all cases: as a list, and as a calendar file without detail of a patient. */
export async function dueRoutes(plain: FastifyInstance, { store, now }: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/due", { schema: { querystring: seenFrom } }, async ({ query }): Promise<DueView[]> => {
    const due = await store.due(query);
    return due.map(({ revision: _revision, ...one }) => ({ ...one, mark: caseMark(one.caseId) }));
  });
  app.get("/api/due.ics", { schema: { querystring: withDemo } }, async ({ query: { demo, ...asked } }, reply) => {
    const due = await store.due(asked);
    const told = demo === "with" ? due : due.filter((one) => !one.demo);
    return reply
      .type("text/calendar; charset=utf-8")
      .header("Content-Disposition", 'attachment; filename="canalog-due.ics"')
      .send(dueCalendar(told, now()));
  });
}
