' What people do to a filled book: each workbook of a folder is opened, edited as its file name says, and saved into out.
Sub EditAll(folder As String)
  Dim name As String
  name = Dir(folder & "/*.xlsx")
  Do While name <> ""
    EditOne(folder & "/" & name, folder & "/out/" & name, Left(name, Len(name) - 5))
    name = Dir()
  Loop
  StarDesktop.terminate()
End Sub

Sub EditOne(source As String, target As String, edit As String)
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Dim book As Object, list As Object
  book = StarDesktop.loadComponentFromURL(ConvertToURL(source), "_blank", 0, hidden())
  list = book.Sheets.getByName("Harbour list")
  Select Case edit
    Case "sort-rows"
      SortBy(list.getCellRangeByName("A5:P7"), 1)
    Case "sort-second"
      SortBy(book.Sheets.getByName("Quarry list").getCellRangeByName("A2:N3"), 2)
    Case "insert-in-second"
      book.Sheets.getByName("Quarry list").Rows.insertByIndex(1, 1)
      book.Sheets.getByName("Quarry list").Columns.insertByIndex(2, 1)
    Case "rename-second"
      book.Sheets.getByName("Quarry list").Name = "Quarry, late"
    Case "delete-second"
      book.Sheets.removeByName("Quarry list")
    Case "insert-row"
      list.Rows.insertByIndex(5, 1)
    Case "insert-column"
      list.Columns.insertByIndex(2, 1)
    Case "insert-column-in-ours"
      list.Columns.insertByIndex(12, 1)
    Case "delete-our-column"
      list.Columns.removeByIndex(14, 1)
    Case "rename-sheets"
      list.Name = "Friday's list"
      book.Sheets.getByName("Night plan").Name = "Tonight"
    Case "rename-heading"
      list.getCellRangeByName("K4").String = "Grams of metal"
    Case "copy-sheet"
      book.Sheets.copyByName("Harbour list", "Last week", book.Sheets.Count)
    Case "filter-rows"
      list.Rows.getByIndex(5).IsVisible = False
  End Select
  Dim saving(0) As New com.sun.star.beans.PropertyValue
  saving(0).Name = "FilterName"
  saving(0).Value = "Calc MS Excel 2007 XML"
  book.storeToURL(ConvertToURL(target), saving())
  book.close(True)
End Sub

Sub SortBy(rows As Object, column As Integer)
  Dim fields(0) As New com.sun.star.table.TableSortField
  fields(0).Field = column
  fields(0).IsAscending = True
  Dim sorting(0) As New com.sun.star.beans.PropertyValue
  sorting(0).Name = "SortFields"
  sorting(0).Value = fields()
  rows.sort(sorting())
End Sub
