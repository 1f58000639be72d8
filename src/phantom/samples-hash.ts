import { createHash } from "node:crypto";

/** SHA-256 of samples as little-endian 16-bit numbers: the same on every machine. */
export function samplesHash(samples: Uint16Array): string {
  const bytes = new Uint8Array(samples.length * 2);
  samples.forEach((sample, i) => {
    bytes[2 * i] = sample & 0xff;
    bytes[2 * i + 1] = sample >> 8;
  });
  return createHash("sha256").update(bytes).digest("hex");
}
