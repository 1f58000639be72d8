import { openStore } from "../../src/store/open-store.ts";
import { putItem } from "../samples/cabinet.ts";
import { consentBody, filmBody, newCase, put, recording } from "../samples/gestures.ts";

/** Records without end into the home that is named, and says each change and film once the store has acknowledged it. */
async function write(home: string): Promise<void> {
  const { store } = await openStore(home);
  const cases = await store.cases();
  let state =
    cases.length > 0 ? await store.readCase("case-1") : await store.createCase("case-1", newCase(), recording);
  for (let index = state.sequence; ; index += 1) {
    state = await store.record("case-1", put(`consent-${index}`, "consent", 0, consentBody("2026-02-11")), recording);
    console.log(`change ${state.sequence} ${state.headHash}`);
    if (index % 4 === 0) {
      const hash = await store.keepFilm(new TextEncoder().encode(`film ${index}`.repeat(500)));
      console.log(`film ${hash}`);
      state = await store.record("case-1", put(`film-${index}`, "film", 0, filmBody(hash)), recording);
    }
    const { sequence, headHash } = await store.recordInCabinet(putItem(`shaper-${index}`, "instrument"), recording);
    console.log(`cabinet ${sequence} ${headHash}`);
    if (index % 8 === 0) state = await store.undo("case-1", recording);
  }
}

const [home] = process.argv.slice(2);
if (home !== undefined) await write(home);
