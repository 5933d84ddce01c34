import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MODEL_VERSION } from '../../src/model';
import { migrations } from '../../src/model/migrations/every-migration';

const FOLDER = join(import.meta.dirname, '../../src/model/migrations');

/**
 * Every file that makes up a migration, with the SHA-256 of its text as it shipped. A migration that has shipped has been at work on
 * somebody's book: a change of it makes books of one version that are of two kinds, of which one loses records. Mend what it left in a
 * migration of its own at the end, and write its line here.
 */
const shipped = {
  '02-side-margins.ts': '53f1c745315b8641b318b7c32a4b24dd36d27c9dd945f3e5a9a251934065cbd0',
  '03-the-shop.ts': 'edd4f2fdf95028b82d3d29b85e57db75b7ce19227c8110d32e0ed17711297d76',
  '04-together.ts': '8a65ed823d77f7a838ff0aa7e7f6ae9eb9e37f83fed23c17773247f6ee4f7526',
  '05-artwork-limits.ts': '4fec55d9e39a19434170a2952a9301273672bc719dda2ccbaa787b5dbcabec7b',
  '06-print-images.ts': 'cbfac86944889f8cfb3e483a8bc6ccbc3f53d2f6f84828d4f552db04c40060f1',
  '07-the-press.ts': '4dc63b5e61c6317ed4ada2bfac5c2bf06cd27f998d951edddb4888678fd27d49',
  '08-ink.ts': '98bd2fb606c9a8384a4ad4cd46ad3be6c916d8f09cfc542b836ccc41ffaa8187',
  '09-language.ts': '3425bc6a9a7ac76d84a9a8cfedc42025efa755716f381b2f70b36ca1828b7a36',
  '10-ledger.ts': 'd11dab7ca67990576cf07349cdddfb538cd15a4a0adf4f0fec1fdf8cd9146cc8',
  '11-meant.ts': 'e28e1acdf8a74a9dadbbfea235a60ba829297912d657cc764ac9f7c9599a5170',
  '12-hand-over.ts': 'bc2319d0f1a98dad5c0c4b9d6e2227a5ab1cdbfb85a10079a604121864d3911a',
  '13-money.ts': '2f8f4edcd7ac36b7e153a3946872499fa37be7d6864882bbd6301ea3fa835072',
  '14-upkeep.ts': 'f12b4ee9aa778043d3e966607695f82169ff6a74e742bc570a90996a852c4de9',
  '15-quotes.ts': 'c7ca98cb299dadf2bfa1fedfb0ba907d5a1b7aeee5e79c6f49b69f49e98a0bb8',
  '16-starts.ts': '64655ff1ab0f917a09aedcd9d12a7e903780c1d9533b9e06138460376e8c0cf0',
  '17-states.ts': '23d0e549c238f6e1938cf5d891b814a70cb25d6859fe2b9505e65c9341d1a177',
  '18-garment-places.ts': 'e1dcb330e28d29ec26a9d13d10a3ce8ff634f24167a6ba7c309b9095aff729f0',
  '19-whole-threes.ts': 'b19944c00eb463701211824d136aa134779a8d7108afc49a7b1cda7750025ef4',
  '20-copies-pressed.ts': '26834ca7befdec5ced6bd7b51e01b39e33aa9c87b89620e8c1acfec14d32c802',
  '21-let-go.ts': 'd6b8fc6cc65e9a5fbf908122ad0537f5459cdadda15404c3ea7f55fd8191068d',
  '22-corrections.ts': '083ab304ad1e92e71669986dcd74b86d42aa90d747f1584c9c7a8ab00b239a7c',
  '23-tables.ts': '1f719df999b9c8999304e757e7c80720d2e6065a19dc18cdb1d05610cb3492ef',
  '24-due-first.ts': '145810c87ae31d98a2bdffbb422d84a9cd6d31be0fc40b6fb074c89eb1d63eb9',
  '25-unprinted.ts': 'c937a41d4b1e46a4f90afcd93c37f47f1d56bba423bd8d7c1bef3a31dd3ac732',
  '26-feed.ts': 'cee26e79a0fca7c3564fe50f878192848ddf32b979669bdd965b6eac6c771c7f',
  '27-mends.ts': 'd6c34bd17cab263e7fa649d36477a208412ace84b1e75c69ddae3f1475645468',
  '28-tints.ts': 'e91f0f6a992ec8b42faf941c7c79f1b6cfb73878e59273f4d76cbc8f61185a5b',
  '29-hours.ts': '4c729b4beee94e058e6510b5e18d5c4d3a537f31dda3192ba38f1ed90bde5a3e',
  '30-screens.ts': 'bd8467b3246fa725847b847af0885fc28e1d752e54fa8f9d9d3db053bae82dd4',
  '31-outlines.ts': '8ded635264dec282de08d1a0ffc0c58870a3ac740a0b17aa12aa5dcd2f6ae5f9',
  '32-angles.ts': '9f6828001a1119769af2187f8e02b1f7b2c35f5bc55230ccc8c088c6111a1252',
  '33-pdf.ts': '17ad20ee142eeb5887a801fcfde2b0ef728b0b56799d38bc7595217506c6b29b',
  '34-cut-files.ts': 'ebf34099c9f5b3c28dbcd43a44c76e03cf5b9700572f81a42b6f5bdd96affae8',
  '35-mark.ts': '627bc5cf25175ee51f1088da18810d499f269690204b61ef4cffa842fbff63a8',
  '36-white.ts': '7a8a2a1e15c0256a8e6ae0988dea873ed520069146f5714bd27c9352a69ae101',
  '37-copy-names.ts': 'b367d345ee3265d702bbc9ccacb9e963675c8f776f289768a4c07934adf2df37',
  '38-large.ts': 'd18310c33fdec13f0d920ee381176646f4f263bc71a4e6c0c7858cbad55cb418',
  '39-jobs.ts': '4c817da2094b2e53df51f733c7acbca96d7fc1305bcd45aa534977ac12d512f3',
  '40-fabrics.ts': '7179f1b6f48fcffa15c05fe80f52175afa279152cddee6221eb192fdb0b67708',
  '41-true-times.ts': '519906c9a9e172f5e1ad9be6386fa90d618ab463aa73829bb5efaba7beb7186f',
  '42-sizes.ts': '7c3de63cbedd696b75e73ac1ce7d3fafb795e5640b1d5d5874ef60e71bb751c2',
  '43-caps.ts': 'a18a83cfd799cdb4e48c3c3503e7da794ad6f442742bfed7cd68cee83a0a46f5',
  '44-holes.ts': '310b726dad82ad34b83eff62364f60e9f9a79e8ea24cbdad9dd1a164a19b7c59',
  '45-machines.ts': 'c268bfa7365272d7f706a898b8741c2bab5bc166be9e12cdf0f94fe44dc6a4f4',
  '46-upkeep.ts': '45daa5d79f93768a39e9ade91099317211bd8142c293ca5574e3a5b2f5a39d2a',
  '47-done-on.ts': '8239b89e7da36258b654f167ae9c704e7bece9ff3df84c18474f3df6d2205b36',
  'change-records.ts': '0d75d4b451d9ff6f6fb0f9b8f62d74efb0f41eec26ea81623add4ab1543ec1bd',
  'stored.ts': '521b36949643db86ab41a1f8f81e07c874feccec408a8406320ebcc749fe44c7',
} as const;

const digests = Object.fromEntries(
  readdirSync(FOLDER)
    .filter((name) => !['index.ts', 'every-migration.ts'].includes(name))
    .map((name) => [
      name,
      createHash('sha256')
        .update(readFileSync(join(FOLDER, name)))
        .digest('hex'),
    ]),
);

describe('migrations that have shipped', () => {
  it('are never changed: append another', () => expect(digests).toEqual(shipped));

  it('are all there, one for each version', () => {
    const versions = Object.keys(shipped).flatMap((name) => /^\d+/.exec(name)?.[0] ?? []);
    expect(versions.map(Number)).toEqual(Array.from({ length: MODEL_VERSION - 1 }, (_, index) => index + 2));
    expect(migrations.length).toBe(MODEL_VERSION - 1);
  });
});
