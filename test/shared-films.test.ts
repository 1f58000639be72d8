import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { Refusal } from "../src/core/refusal.ts";
import { decodeFilm } from "../src/imaging/decode-film.ts";

const data = process.env.CANALOG_SHARED ?? join(import.meta.dirname, "..", "..", "shared");
const folders = ["dicom_mit", "synthetic", "synthetic/ts", "canine_slices_ccby4"].map((name) =>
  join(data, "data", name),
);
const present = folders.filter((folder) => existsSync(folder));
const files = present.flatMap((folder) =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(dcm|png|jpe?g|tiff?)$/i.test(entry.name))
    .map((entry) => join(folder, entry.name)),
);

/** Of the files that come with the sources: what can't be read as one film, and the words that say why. */
const refused: Readonly<Record<string, RegExp>> = {
  "meta_missing_tsyntax.dcm": /does not say how it is written/,
  "nested_priv_SQ.dcm": /its header goes on beyond/,
  "no_meta_group_length.dcm": /without a picture/,
  "parametric_map_float.dcm": /floating numbers/,
  "JPEG2000-embedded-sequence-delimiter.dcm": /header of its packed picture/,
  "MR_truncated.dcm": /ends early/,
  "UN_sequence.dcm": /without a picture/,
};
const manyFrames = /it holds \d+ frames/;

describe(`films beside the checkout${files.length > 0 ? "" : `, skipped: none at ${data}; set CANALOG_SHARED`}`, () => {
  it.skipIf(files.length === 0).each(files.length === 0 ? ["none"] : files)(
    "%s opens or is refused in words",
    async (file) => {
      const name = file.split("/").at(-1) ?? "";
      const outcome = await decodeFilm(new Uint8Array(readFileSync(file)), name).catch((error: unknown) => error);
      if (!(outcome instanceof Refusal)) {
        expect(outcome).not.toBeInstanceOf(Error);
        expect(Object.keys(refused)).not.toContain(name);
        return;
      }
      expect(outcome.message).toMatch(/^Cannot read .*: .*;/);
      expect(outcome.message).toMatch(refused[name] ?? manyFrames);
    },
  );
});
