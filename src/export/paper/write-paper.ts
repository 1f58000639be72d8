import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { PageModel } from "../../pages/page-model.ts";
import type { PictureBlock, Pictures } from "../pictures.ts";
import { paperLooks } from "./paper-look.ts";
import { paperSource } from "./paper-source.ts";

/** A document model as a tagged PDF (PDF/UA-1), set in the shipped fonts. */
export async function writePaper(
  model: PageModel & { readonly as: keyof typeof paperLooks },
  pictures: Pictures,
  fontsFolder: string,
): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), "canalog-paper-"));
  try {
    const names = new Map<PictureBlock, string>();
    for (const [block, png] of pictures) {
      names.set(block, `picture-${names.size}.png`);
      await writeFile(join(folder, `picture-${names.size - 1}.png`), png);
    }
    const source = paperSource(model, { look: paperLooks[model.as], nameOf: (block) => names.get(block) ?? "" });
    await writeFile(join(folder, "main.typ"), source);
    const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontPaths: [fontsFolder] }] });
    return compiler.pdf({ mainFilePath: join(folder, "main.typ") }, { pdfStandard: "ua-1" });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
