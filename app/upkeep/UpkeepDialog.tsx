import { useState } from 'react';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { initialsNow, sayInitials } from '../store/initials';
import { useShop } from '../store/shop';
import { lastInitials } from '../store/upkeep';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { CheckList } from './CheckList';
import { History } from './History';
import type { Initials } from './initials';
import { PastDates } from './PastDates';
import { RoomAir } from './RoomAir';
import { ShopList } from './ShopList';
import './upkeep.css';

/** What is due, ticked off with a date and initials; the air of the room; the shop's own list; what was noted. */
export function UpkeepDialog() {
  const { upkeep: words, common } = useAllWords();
  const [by, setBy] = useState(() => initialsNow() || lastInitials(useShop.getState().book));
  const [note, setNote] = useState('');
  const [asked, setAsked] = useState(false);
  const initials: Initials = () => {
    setAsked(by.trim() === '');
    if (by.trim() !== '') sayInitials(by);
    return by.trim() || null;
  };
  return (
    <Window title={words.title} wide>
      <p className="quiet small">{words.hint}</p>
      <div className="upkeep-who">
        <Field
          label={words.by}
          hint={words.byHint}
          value={by}
          onChange={setBy}
          problem={asked && by.trim() === '' ? words.byNeeded : null}
        />
        <Field label={words.note} hint={words.noteHint} value={note} onChange={setNote} />
      </div>
      <div className="upkeep-columns">
        <CheckList initials={initials} note={note.trim()} onNoted={() => setNote('')} />
        <div className="upkeep-side">
          <RoomAir initials={initials} />
          <PastDates />
        </div>
      </div>
      <ShopList />
      <History />
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}
