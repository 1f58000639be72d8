// Makes the films of the click exercise in data/calibration: `node scripts/calibration/make-films.mjs [NAME ..]`.
// Without names all films are made (some minutes); with names only those, and the others' lines are kept.
import { runBundled } from "../demo/run-bundled.mjs";

const { makeFilms } = await runBundled("scripts/calibration/make-films.ts");
makeFilms(process.argv.slice(2));
