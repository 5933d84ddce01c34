import type { Words } from '../en';

export const keys: Words['keys'] = {
  title: 'Todas las teclas',
  onFilm: 'mientras la película o la tabla de copias tiene el foco',
  everywhere: 'en todas partes',
  mod: 'Ctrl',
  shift: 'Mayús',
  alt: 'Alt',
  names: {
    ArrowRight: '→',
    ArrowLeft: '←',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Delete: 'Supr',
    Backspace: 'Retroceso',
    Enter: 'Intro',
    Escape: 'Esc',
    PageDown: 'Av Pág',
    PageUp: 'Re Pág',
  },
};
