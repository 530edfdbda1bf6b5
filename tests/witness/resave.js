// Opens each workbook with a library and saves it into a folder: node resave.js exceljs|xlsx FOLDER BOOK...
const { join, basename } = require('path');

const savers = {
  async exceljs(path, target) {
    const book = new (require('exceljs').Workbook)();
    await book.xlsx.readFile(path);
    await book.xlsx.writeFile(target);
  },
  async xlsx(path, target) {
    const XLSX = require('xlsx');
    XLSX.writeFile(XLSX.readFile(path, { cellStyles: true }), target);
  },
};

(async () => {
  const [library, folder, ...books] = process.argv.slice(2);
  for (const path of books) {
    await savers[library](path, join(folder, basename(path)));
  }
})();
