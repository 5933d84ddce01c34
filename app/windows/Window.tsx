import { type ReactNode, useEffect } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { openDialog } from '../store/view';

/**
 * Closes the window on Escape where nothing has the focus: a button that was pressed and can be pressed no more, or is gone, takes it
 * along, and the window alone would not hear of the key.
 */
function useEscape(): void {
  useEffect(() => {
    const onKeyDown = ({ key }: KeyboardEvent) => {
      if (key === 'Escape' && document.activeElement === document.body) openDialog(null);
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, []);
}

/** A window over the room; Escape and a press beside it close it. */
export function Window({
  title,
  wide = false,
  children,
}: {
  title: string;
  /** As wide as the screen allows, for pictures. */
  wide?: boolean;
  children: ReactNode;
}) {
  useEscape();
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={() => openDialog(null)}>
      <Modal>
        <Dialog className={wide ? 'dialog wide' : 'dialog'}>
          <Heading slot="title">{title}</Heading>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
