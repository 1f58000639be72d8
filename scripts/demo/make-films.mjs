// Makes the demo's films in data/demo/films: `node scripts/demo/make-films.mjs [NAME ..] [--dicom FOLDER]`.
// Without names all films are made (some minutes); with names only those, and the others' lines are kept.
import { runBundled } from "./run-bundled.mjs";

const { makeFilms } = await runBundled("scripts/demo/make-films.ts");
const args = process.argv.slice(2);
const dicomAt = args.indexOf("--dicom");
const names = args.filter((_, i) => dicomAt < 0 || (i !== dicomAt && i !== dicomAt + 1));
makeFilms({ names, ...(dicomAt < 0 ? {} : { dicomFolder: args[dicomAt + 1] }) });
