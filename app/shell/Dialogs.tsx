import { Suspense } from 'react';
import { ArtworkDialog } from '../artwork/ArtworkDialog';
import { CalibrateDialog } from '../calibrate/CalibrateDialog';
import { CompareDialog, CompareOrderDialog } from '../costs/CompareDialog';
import { CostSheetDialog } from '../costs/CostSheetDialog';
import { CostsDialog } from '../costs/CostsDialog';
import { MakeOrBuyDialog } from '../costs/MakeOrBuyDialog';
import { TestStripDialog } from '../cut-map/TestStripDialog';
import { FabricsDialog } from '../film/FabricsDialog';
import { FilmDialog } from '../film/FilmDialog';
import { PrintedDialog, SpoiledDialog } from '../film/ProgressDialogs';
import { RunDialog } from '../film/RunDialog';
import { HandOverDialog } from '../hand-over/HandOverDialog';
import { part } from '../offline/part';
import { ArchiveDialog } from '../orders/ArchiveDialog';
import { DesignDialog } from '../orders/DesignDialog';
import { GridDialog } from '../orders/GridDialog';
import { MatchDialog } from '../orders/MatchDialog';
import { NamesDialog } from '../orders/NamesDialog';
import { OrderDialog } from '../orders/OrderDialog';
import { PasteDialog } from '../orders/PasteDialog';
import { TransferDialog } from '../orders/TransferDialog';
import { CloseDialog } from '../press/CloseDialog';
import { RecipesDialog } from '../press/RecipesDialog';
import { SpoilDialog } from '../press/SpoilDialog';
import { StationDialog } from '../press/StationDialog';
import { PriceDialog } from '../pricing/PriceDialog';
import { PricesDialog } from '../pricing/PricesDialog';
import { PrintImageDialog } from '../print-image/PrintImageDialog';
import { AddStockDialog } from '../stock/AddStockDialog';
import { CsvDialog } from '../stock/CsvDialog';
import { StockItemDialog } from '../stock/StockItemDialog';
import { useView } from '../store/view';
import { UpkeepDialog } from '../upkeep/UpkeepDialog';
import { KeepDialog } from './KeepDialog';
import { KeysDialog } from './KeysDialog';
import { ShopDialog } from './ShopDialog';
import { SnapshotDialog } from './SnapshotDialog';

/** Apart from the others: it brings along what grows outlines. */
const CutFileDialog = part(() =>
  import('../cut-file/CutFileDialog').then(({ CutFileDialog: dialog }) => dialog),
);

/** The window that lies over the room; loaded when the first is opened. */
export function Dialogs() {
  const dialog = useView((view) => view.dialog);
  switch (dialog?.kind) {
    case 'paste':
      return <PasteDialog text={dialog.text} />;
    case 'order':
      return <OrderDialog id={dialog.order} />;
    case 'grid':
      return <GridDialog id={dialog.order} />;
    case 'names':
      return <NamesDialog id={dialog.order} />;
    case 'transfer':
      return <TransferDialog id={dialog.transfer} />;
    case 'artwork':
      return <ArtworkDialog id={dialog.transfer} />;
    case 'design':
      return <DesignDialog order={dialog.order} design={dialog.design} />;
    case 'archive':
      return <ArchiveDialog id={dialog.order} />;
    case 'match-artwork':
      return <MatchDialog files={dialog.files} order={dialog.order} />;
    case 'film':
      return <FilmDialog />;
    case 'run':
      return <RunDialog />;
    case 'fabrics':
      return <FabricsDialog id={dialog.run} />;
    case 'printed':
      return <PrintedDialog />;
    case 'spoiled':
      return <SpoiledDialog />;
    case 'print-image':
      return <PrintImageDialog />;
    case 'cut-file':
      return (
        <Suspense>
          <CutFileDialog />
        </Suspense>
      );
    case 'cost-sheet':
      return <CostSheetDialog id={dialog.run} />;
    case 'compare':
      return <CompareDialog id={dialog.run} />;
    case 'compare-order':
      return <CompareOrderDialog id={dialog.order} />;
    case 'make-or-buy':
      return <MakeOrBuyDialog id={dialog.run} />;
    case 'costs':
      return <CostsDialog back={dialog.back} />;
    case 'price':
      return <PriceDialog id={dialog.order} />;
    case 'prices':
      return <PricesDialog back={dialog.back} />;
    case 'keep':
      return <KeepDialog />;
    case 'snapshot':
      return <SnapshotDialog at={dialog.at} />;
    case 'test-strip':
      return <TestStripDialog />;
    case 'station':
      return <StationDialog />;
    case 'recipes':
      return <RecipesDialog />;
    case 'close-run':
      return <CloseDialog id={dialog.run} />;
    case 'csv':
      return <CsvDialog what={dialog.what} />;
    case 'stock-add':
      return <AddStockDialog garment={dialog.garment} />;
    case 'stock-item':
      return <StockItemDialog id={dialog.item} />;
    case 'spoil':
      return <SpoilDialog inHand={dialog.copy} at={dialog.stage} />;
    case 'calibrate':
      return <CalibrateDialog />;
    case 'upkeep':
      return <UpkeepDialog />;
    case 'shop':
      return <ShopDialog />;
    case 'hand-over':
      return <HandOverDialog />;
    case 'keys':
      return <KeysDialog />;
    case undefined:
      return null;
  }
}
