import { expose } from 'comlink';
import { readTable, type TableReading, type TableWays } from '..';

const reader = {
  read: (text: string, ways: TableWays, onShare: (share: number) => void): TableReading =>
    readTable(text, ways, onShare),
};

export type TableReader = typeof reader;

expose(reader);
