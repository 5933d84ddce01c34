import { useWords } from '../words';

/** What the shop has: film, offcuts, ink, powder, garments and the shelf, and the ledger of all that came and went. */
export function StockRoom() {
  const { stock: words } = useWords();
  return (
    <div className="room-head">
      <h1>{words.title}</h1>
    </div>
  );
}
