// Reads workbooks with SheetJS and prints { book: { sheet: { address: value } } }; null for a book it cannot read.
const { readFileSync } = require('fs');
const { basename } = require('path');
const XLSX = require('xlsx');

const books = {};
for (const path of process.argv.slice(2)) {
  try {
    const book = XLSX.read(readFileSync(path), { cellFormula: true });
    const sheets = (books[basename(path)] = {});
    for (const name of book.SheetNames) {
      const cells = (sheets[name] = {});
      for (const [address, cell] of Object.entries(book.Sheets[name])) {
        if (address[0] !== '!' && (cell.f !== undefined || (cell.v !== undefined && cell.v !== ''))) {
          cells[address] = `${cell.f === undefined ? '' : `=${cell.f} `}${cell.v ?? ''}`;
        }
      }
    }
  } catch (error) {
    books[basename(path)] = null;
  }
}

process.stdout.write(JSON.stringify(books));
