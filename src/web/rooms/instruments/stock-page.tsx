import { Link } from "wouter";
import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { templatesOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { stockInWords, stockKindWords } from "../../../record/words/stock-words.ts";
import { dayInWords, today } from "../../parts/days-in-words.ts";
import { DayField } from "../../parts/fields/day-field.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { capital } from "../../words/capital.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { nameOfItem } from "./item-names.ts";
import { StockFields } from "./stock-fields.tsx";
import { isPast } from "./stock-state.ts";

/** A material of the clinic: its kind, its strength, the package in use. */
export function StockPage({ item }: { readonly item: CabinetItemOf<"stock"> }) {
  const { holds, expires } = item.body;
  return (
    <>
      {expires !== undefined && isPast(item, today()) && (
        <p className="cabinet-refused" role="status">
          ◆ Expired on {dayInWords(expires)}. A visit that uses it asks first.
        </p>
      )}
      <section className="form-part">
        <h3>{capital(stockKindWords[holds.kind])}</h3>
        <p className="quiet">{stockInWords(holds)}. Another kind is another material.</p>
        <StockFields kind={holds.kind} />
      </section>
      <section className="form-part">
        <h3>This material here</h3>
        <div className="fields">
          <TextField at="name" label="Name" placeholder="as the clinic calls it; no maker's name" />
          <TextField at="lot" label="Lot of the package in use" optional />
          <DayField at="expires" label="Expires" optional />
        </div>
      </section>
      <TemplatesWithIt id={item.id} />
    </>
  );
}

function TemplatesWithIt({ id }: { readonly id: string }) {
  const { view } = useCabinetNow();
  const own = templatesOf(view.items).filter(({ body }) => body.stock.includes(id));
  if (own.length === 0) return null;
  return (
    <section className="form-part">
      <h3>Templates that offer it first</h3>
      <ul className="cabinet-names">
        {own.map((one) => (
          <li key={one.id}>
            <Link href={`/instruments/${one.id}`}>{nameOfItem(one)}</Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
