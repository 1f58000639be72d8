/**
 * Lets a command go on where nobody reads its words any more, as behind `| head`: what it does is done to its end, the
 * words that are left are lost. Anything else that is wrong with a stream is thrown on.
 */
export function hearClosedPipe(...streams: readonly Pick<NodeJS.WriteStream, "on">[]): void {
  for (const stream of streams)
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "EPIPE" && error.code !== "ERR_STREAM_DESTROYED") throw error;
    });
}
