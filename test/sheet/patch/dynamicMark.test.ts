import { dynamicMark } from '../../../src/sheet/patch/dynamicMark';
import { OpenParts } from '../../../src/sheet/patch/openParts';
import { partIn, smallWorkbook } from './smallWorkbook';

const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const xda = 'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"';
const property = (collapsed: number): string =>
  `<bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="${collapsed}"/></ext></extLst></bk>`;

function marked(metadata?: string): { mark: string; file: Uint8Array } {
  const parts = new OpenParts(smallWorkbook({ sheet: '', ...(metadata !== undefined && { metadata }) }));
  const mark = dynamicMark(parts, 'xl/workbook.xml');
  expect(dynamicMark(parts, 'xl/workbook.xml')).toBe(mark);
  return { mark, file: parts.file() };
}

describe('dynamicMark', () => {
  it('adds the part, its relation and its type to a file without', () => {
    const { mark, file } = marked();
    expect(mark).toBe('1');
    expect(partIn(file, 'xl/metadata.xml')).toMatch(
      /<metadataTypes count="1"><metadataType name="XLDAPR".*<futureMetadata name="XLDAPR" count="1"><bk>.*fDynamic="1" fCollapsed="0".*<cellMetadata count="1"><bk><rc t="1" v="0"\/><\/bk><\/cellMetadata><\/metadata>$/,
    );
    expect(partIn(file, 'xl/_rels/workbook.xml.rels')).toContain(
      '<Relationship Id="rId3" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>',
    );
    expect(partIn(file, '[Content_Types].xml')).toContain(
      '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/></Types>',
    );
  });

  it('uses the entry that is there', () => {
    const metadata =
      `<metadata ${main} ${xda}><metadataTypes count="2"><metadataType name="XLRICHVALUE"/><metadataType name="XLDAPR" cellMeta="1"/></metadataTypes>` +
      `<futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata><futureMetadata name="XLDAPR" count="2">${property(1)}${property(0)}</futureMetadata>` +
      '<cellMetadata count="3"><bk><rc t="2" v="0"/></bk><bk><rc t="2" v="1"/></bk><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
    const { mark, file } = marked(metadata);
    expect(mark).toBe('2');
    expect(partIn(file, 'xl/metadata.xml')).toBe(metadata);
  });

  it('adds what is missing to metadata of another kind, whatever their prefix', () => {
    const metadata =
      `<x:metadata xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:metadataTypes count="1"><x:metadataType name="XLRICHVALUE"/></x:metadataTypes>` +
      '<x:futureMetadata name="XLRICHVALUE" count="1"><x:bk/></x:futureMetadata><x:valueMetadata count="1"><x:bk><x:rc t="1" v="0"/></x:bk></x:valueMetadata></x:metadata>';
    const { mark, file } = marked(metadata);
    expect(mark).toBe('1');
    const after = partIn(file, 'xl/metadata.xml');
    expect(after).toMatch(
      /<x:metadataTypes count="2"><x:metadataType name="XLRICHVALUE"\/><x:metadataType name="XLDAPR"[^>]*\/><\/x:metadataTypes><x:futureMetadata name="XLRICHVALUE" count="1"><x:bk\/><\/x:futureMetadata><x:futureMetadata name="XLDAPR" count="1"><x:bk><x:extLst><x:ext uri=[^>]*><xda:dynamicArrayProperties xmlns:xda=[^>]*\/><\/x:ext><\/x:extLst><\/x:bk><\/x:futureMetadata><x:cellMetadata count="1"><x:bk><x:rc t="2" v="0"\/><\/x:bk><\/x:cellMetadata><x:valueMetadata count="1">/,
    );
  });

  it('adds an entry for cells to a property that is there', () => {
    const metadata = `<metadata ${main} ${xda}><metadataTypes count="1"><metadataType name="XLDAPR"/></metadataTypes><futureMetadata name="XLDAPR" count="1">${property(0)}</futureMetadata><cellMetadata count="1"><bk><rc t="9" v="0"/></bk></cellMetadata></metadata>`;
    const { mark, file } = marked(metadata);
    expect(mark).toBe('2');
    expect(partIn(file, 'xl/metadata.xml')).toBe(
      metadata.replace(
        '<cellMetadata count="1"><bk><rc t="9" v="0"/></bk>',
        '<cellMetadata count="2"><bk><rc t="9" v="0"/></bk><bk><rc t="1" v="0"/></bk>',
      ),
    );
  });
});
