import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { openDialog } from '../store/view';

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
