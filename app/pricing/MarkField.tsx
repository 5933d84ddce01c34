import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { readMark } from '../panels/shop-mark/mark-file';
import { MarkPicture } from '../panels/shop-mark/ShopMark';
import { Button } from '../parts/Button';
import { FileButton } from '../parts/FileButton';
import { useAllWords } from '../words';

/** The shop's mark, chosen from a picture; without one its initials stand for it. */
export function MarkField({
  mark,
  onChange,
}: {
  mark: string | null;
  onChange: (mark: string | null) => void;
}) {
  const { prices: words } = useAllWords();
  const [isRefused, setIsRefused] = useState(false);
  const take = async (files: FileList | null) => {
    const [file] = files ?? [];
    if (!file) return;
    const read = await readMark(file);
    setIsRefused(read === null);
    if (read !== null) onChange(read);
  };
  return (
    <div className="mark-field">
      <span className="field-name">{words.mark}</span>
      <MarkPicture mark={mark} />
      <FileTrigger acceptedFileTypes={['image/*']} onSelect={(files) => void take(files)}>
        <FileButton writes>{mark === null ? words.chooseMark : words.otherMark}</FileButton>
      </FileTrigger>
      {mark !== null && (
        <Button writes weight="plain" onPress={() => onChange(null)}>
          {words.noMark}
        </Button>
      )}
      <p className={isRefused ? 'error small' : 'quiet small'} role={isRefused ? 'alert' : undefined}>
        {isRefused ? words.markRefused : words.markHint}
      </p>
    </div>
  );
}
