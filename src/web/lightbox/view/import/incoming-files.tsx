import { type ReactNode, useEffect, useRef, useState } from "react";

interface IncomingFilesOptions {
  readonly take: (file: File) => void;
  readonly children: (open: () => void, isOver: boolean) => ReactNode;
}

/** Takes files by choosing, dropping anywhere in the room, or pasting. */
export function IncomingFiles({ take, children }: IncomingFilesOptions) {
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const pasted = (event: ClipboardEvent) => {
      const file = event.clipboardData?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      latest.current(file);
    };
    window.addEventListener("paste", pasted);
    return () => window.removeEventListener("paste", pasted);
  }, []);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping has its button and its key beside it
    <div
      className="incoming"
      onDragOver={(event) => {
        if (!event.dataTransfer.types.includes("Files")) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={(event) => event.currentTarget === event.target && setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer.files[0];
        if (file !== undefined) take(file);
      }}
    >
      {children(() => input.current?.click(), isOver)}
      <input
        ref={input}
        type="file"
        hidden
        onChange={({ target }) => {
          const file = target.files?.[0];
          target.value = "";
          if (file !== undefined) take(file);
        }}
      />
    </div>
  );
}
