import { Refusal } from "../core/refusal.ts";
import { refuseFile } from "./refuse-file.ts";
import { CodecMissing, type CodecPicture, type PackedPicture, unpackWithCodec } from "./wasm-codec.ts";

const kinds = { jpeg: "JPEG", jpegLs: "JPEG-LS", jpeg2000: "JPEG 2000" } as const;

/**
 * What a codec unpacks, with anything it throws turned into a refusal of the file.
 * Takes the file's name and the packed picture. Gives the samples as the codec does.
 * @throws Refusal `file.damaged`; `file.unsupported` where the codec itself could not be loaded, or the refusal of
 * whoever brings it.
 */
export async function unpackOrRefuse(name: string, packed: PackedPicture): Promise<CodecPicture> {
  const kind = kinds[packed.codec];
  try {
    return await unpackWithCodec(packed);
  } catch (cause) {
    // Whoever brings the codec may have said better why it is not there.
    if (cause instanceof CodecMissing && cause.cause instanceof Refusal) throw cause.cause;
    if (cause instanceof CodecMissing)
      throw refuseFile(name, {
        code: "file.unsupported",
        state: `the part of the program that reads ${kind} could not be loaded; start again, or save the film as PNG`,
        cause,
      });
    const state = `its ${kind} data are damaged; export the film again`;
    throw refuseFile(name, { code: "file.damaged", state, cause });
  }
}
