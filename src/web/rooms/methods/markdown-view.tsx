import { createElement, Fragment, type ReactNode } from "react";
import { type Block, readMarkdown, type Span, spansOf } from "./read-markdown.ts";

/** A method page as it is read. */
export const MarkdownView = ({ text }: { readonly text: string }) => (
  <div className="markdown">{readMarkdown(text).map((block, index) => keyed(index, drawn(block)))}</div>
);

const keyed = (key: number, node: ReactNode): ReactNode => <Fragment key={key}>{node}</Fragment>;

function drawn(block: Block): ReactNode {
  switch (block.is) {
    case "heading":
      return createElement(`h${Math.min(4, block.level + 1)}`, null, line(block.text));
    case "paragraph":
      return <p>{line(block.text)}</p>;
    case "code":
      return <pre>{block.text}</pre>;
    case "list":
      return createElement(
        block.ordered ? "ol" : "ul",
        { "data-ordered": block.ordered },
        ...block.items.map((item) => <li key={item}>{line(item)}</li>),
      );
    case "table":
      return <Table {...block} />;
  }
}

const Table = ({ head, rows }: Extract<Block, { is: "table" }>) => (
  <div className="markdown-scroll">
    <table>
      <thead>
        <tr>{head.map((cell, index) => keyed(index, <th scope="col">{line(cell)}</th>))}</tr>
      </thead>
      <tbody>
        {rows.map((cells, row) =>
          keyed(
            row,
            <tr {...place(cells[0] ?? "")}>{cells.map((cell, index) => keyed(index, <td>{line(cell)}</td>))}</tr>,
          ),
        )}
      </tbody>
    </table>
  </div>
);

/** A row that is called by a name, as P3, is a place of its own that an address can lead to. */
const place = (name: string) => (/^[A-Z]\d+$/.test(name) ? { id: name, tabIndex: -1 } : {});

const line = (text: string): ReactNode => spansOf(text).map((span, index) => keyed(index, piece(span)));

function piece({ is, text, href = "" }: Span): ReactNode {
  if (is === "strong") return <strong>{text}</strong>;
  if (is === "emphasis") return <em>{text}</em>;
  if (is === "code") return <code>{text}</code>;
  const page = /(?:^|\/)([a-z-]+)\.md/.exec(href)?.[1];
  if (is === "link" && page !== undefined) return <a href={`/methods/${camel(page)}`}>{text}</a>;
  return text;
}

/** A method page is named for its topic: working-length for workingLength. */
const camel = (name: string): string => name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
