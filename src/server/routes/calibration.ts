import { randomInt, randomUUID } from "node:crypto";
import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { clickExerciseAnswer } from "../../ledger/click-exercise.ts";
import { type ExerciseView, type Job, newExerciseMarkSchema, takenBackSchema, useOfExerciseSchema } from "../api.ts";
import type { Bench } from "../bench.ts";
import { calibrationFilmsIn, filmsOf } from "../calibration-films.ts";
import { withMark, withoutLastMark } from "../exercise-marks.ts";
import { sigmaOfExercise } from "../exercise-sigma.ts";
import { calibrationView, exerciseView } from "../exercise-view.ts";
import { writeSettings } from "../write-settings.ts";

/** The calibration room: exercises begun, marked, worked out, and used from then on. */
export async function calibrationRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const films = calibrationFilmsIn(bench.shipped);
  const { store } = bench;
  const view = async (exercise: Parameters<typeof exerciseView>[0]): Promise<ExerciseView> =>
    exerciseView(exercise, await films.list());
  const one = { params: z.object({ id: z.string().regex(/^exercise-[a-z0-9-]{1,40}$/) }) };
  const address = "/api/calibration/exercises/:id";

  app.get("/api/calibration", () => calibrationView(bench, films));
  app.post("/api/calibration/exercises", async () => {
    const { who } = await store.settings();
    const seed = randomInt(0, 2 ** 32);
    const id = `exercise-${randomUUID().slice(0, 13)}`;
    const { sha256 } = await films.list();
    return view(
      await store.beginExercise({ id, films: sha256, kind: "clicks", who, begunAt: bench.now(), seed, marks: [] }),
    );
  });
  app.get(address, { schema: one }, async ({ params }) => view(await store.exercise(params.id)));
  app.delete(address, { schema: one }, async ({ params }) => {
    await store.removeExercise(params.id);
    return calibrationView(bench, films);
  });
  app.post(`${address}/marks`, { schema: { ...one, body: newExerciseMarkSchema } }, async ({ params, body }) => {
    const list = await films.list();
    return view(await store.changeExercise(params.id, (stood) => withMark(stood, list, body, bench.now())));
  });
  app.post(`${address}/take-back`, { schema: { ...one, body: takenBackSchema } }, async ({ params, body }) =>
    view(await store.changeExercise(params.id, (stood) => withoutLastMark(stood, body.number))),
  );
  app.post(`${address}/finish`, { schema: one }, async ({ params }) => {
    const list = await films.list();
    return view(
      await store.changeExercise(params.id, (stood) => ({
        ...stood,
        finished: { at: bench.now(), ...clickExerciseAnswer(stood.marks, filmsOf(stood, list)) },
      })),
    );
  });
  app.post(
    `${address}/use`,
    { schema: { ...one, body: useOfExerciseSchema } },
    async ({ params, body }): Promise<Job> => {
      const sigma = sigmaOfExercise(await store.exercise(params.id), body.which);
      return bench.jobs.start("Keeping your click error", async (progress) => {
        await writeSettings(bench, { ...(await store.settings()), ...sigma }, (done, all) =>
          progress(done / all, `Working out case ${done} of ${all} anew`),
        );
        return {};
      });
    },
  );
  const named = { params: z.object({ name: z.string().regex(/^film-\d\d$/) }) };
  app.get("/api/calibration/films/:name", { schema: named }, async ({ params }, reply) =>
    reply
      .type("image/png")
      .header("Cache-Control", "private, max-age=86400")
      .send(await films.picture(params.name)),
  );
}
