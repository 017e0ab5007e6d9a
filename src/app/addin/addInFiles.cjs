/** What the add-in needs in dist beside its bundle: its pages, its manifest, its icons, and the metadata put right. */
const fs = require('node:fs');
const path = require('node:path');
const { Compilation, sources } = require('webpack');
const { iconPng } = require('./iconPng.cjs');

const root = path.resolve(__dirname, '../../..');
const copied = ['manifest.xml', 'src/app/addin/functions.html', 'src/app/addin/taskpane.html'];
const iconSizes = [16, 32, 64, 80, 128];
const metadata = 'functions.json';

class AddInFiles {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap('AddInFiles', (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: 'AddInFiles', stage }, () => {
        for (const file of copied) {
          const from = path.join(root, file);
          compilation.fileDependencies.add(from);
          compilation.emitAsset(path.basename(file), new sources.RawSource(fs.readFileSync(from)));
        }
        for (const size of iconSizes) compilation.emitAsset(`icon-${size}.png`, new sources.RawSource(iconPng(size)));
        if (compilation.getAsset(metadata)) compilation.updateAsset(metadata, withErrorsLetIn);
      });
    });
  }
}

/** The generator has no tag for it; without it the host answers #N/A itself and our message about an error cell is lost. */
function withErrorsLetIn(source) {
  const { allowCustomDataForDataTypeAny, ...rest } = JSON.parse(source.source().toString());
  const whole = { allowCustomDataForDataTypeAny, allowErrorForDataTypeAny: true, ...rest };
  return new sources.RawSource(JSON.stringify(whole, null, 2));
}

module.exports = { AddInFiles };
