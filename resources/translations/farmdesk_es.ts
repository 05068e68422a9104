<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AskLine</name>
    <message>
        <source>Enter writes it; Esc goes back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Balance</name>
    <message>
        <source>Mill: {of}. {pieces} kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Box</name>
    <message>
        <source>not meas.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Chart</name>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sentence} As a table.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Clocks</name>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH not measured</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayRail</name>
    <message>
        <source>The day, {n} jobs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>This is the past. Go back to now to write, or practise from this hour on the page Farm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the past; go back to now to write.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FarmPage</name>
    <message>
        <source>Farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Registers of the farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>largest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds and patio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>methods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buyers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season {code}, {zone}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} lots, {rows} rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {folder}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} copies kept by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practise from this hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from south</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buyer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which season is to be opened?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where is the copy to lie? A stick that is kept elsewhere is best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} was copied, opened and compared: {n} rows, the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading every row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is whole, and as it was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FermentsPage</name>
    <message>
        <source>Ferments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} at work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessels}: empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FilterBox</name>
    <message>
        <source>Filter the lots by code, method, block or place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>l: code, method, block, place, “store”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GapList</name>
    <message>
        <source>Nothing is missing or doubtful.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing or doubtful: {gaps}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing or doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {n} more; t shows all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GoBox</name>
    <message>
        <source>Go to a lot, bed, day or page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back to now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot, bed, day or page</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Guard</name>
    <message>
        <source>0 goes back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Gutter</name>
    <message>
        <source>roof</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tarps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area tide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of {n} usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Down: store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Samples, sales</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>good hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>runs on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earliest to latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked, height = kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HourHandle</name>
    <message>
        <source>Hour handle, {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, right: 1 hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ahead: not known yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotLink</name>
    <message>
        <source>go to lot {code}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotView</name>
    <message>
        <source>f: next of {n}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answer the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watch folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where do the loggers leave their files?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that grow in {folder} are read by themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {all} lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{all} lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lot} lies in no vessel and on no bed, so there is nothing to read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot has begun. The first weighing of cherry begins one: press Alt+P.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotebookPage</name>
    <message>
        <source>Notebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows of the notebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} rows; the last was written {at}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strike out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bring back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is “{row}” struck out? The row stays to be read.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>made from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>went into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differed from the method and nothing is doubtful.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {n} more: m</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Esc closes this</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} {own}, {of} {normal}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PapersPage</name>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot of the lot sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yard sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening, readings, for the yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessels and their likely ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the order of covering, by the tarps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lot on one page, for a buyer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with greys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>black only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season has no lot yet; the sheets for the crew can be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{paper}: {pages}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write the PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where is the PDF to be written?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} could not be written: {why}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} was written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PickerZone</name>
    <message>
        <source>Pickers</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingForm</name>
    <message>
        <source>Reading of {lot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tray {tray}, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tray g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bean °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written {hour}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter writes   + next box   − box before   * not measured   Esc leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written {hour}; / corrects, Ctrl+Z takes it back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RightZone</name>
    <message>
        <source>{minutes} to cover everything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where or who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover {beds}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First {first}, then {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First {first}, then {middle}, last {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to cover everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This afternoon’s fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Someone waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {n} more; t shows all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>River</name>
    <message>
        <source>{kg} kg {name} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights: {stages} kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it dry, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left before it, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{kg} kg dry, unexplained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing weighed twice yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight river</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inner band: dry matter; it narrows only where a stream is named</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Road</name>
    <message>
        <source>Road</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Picking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ferments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>St&amp;ore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cup &amp;&amp; grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;amples &amp;&amp; sales</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Notebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pap&amp;ers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fa&amp;rm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off&amp;ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season {code}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ruler</name>
    <message>
        <source>typing {at}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as known {at}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season&apos;s ruler, {label}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SearchBox</name>
    <message>
        <source>Search the notebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s: lot, person, place, word</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written yet; p goes to Picking, where the first sack is weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh the first sack</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StripWidget</name>
    <message>
        <source>picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>into the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>milled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Title</name>
    <message>
        <source>practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what if</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {m}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still to leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type the yard sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This one cannot be answered with “not measured”; Enter goes to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter answers the first one; “n” writes “not measured”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselZone</name>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessels}: empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready; likely {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Something went wrong in the program and was written down. What you typed is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YardPage</name>
    <message>
        <source>Yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing lies here; p goes to Picking, where the coffee comes from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hour handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picking</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message>
        <source>place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still to leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lot} comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YardSheet</name>
    <message>
        <source>patio {cells}, empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear roof</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand tarps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cover} below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cover} above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand tarps, off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops, down over {beds}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand tarps, on {beds}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops, down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand tarps, on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoops, down since {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand tarps, on since {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N ↑</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YardSide</name>
    <message>
        <source>What changed since {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was written in that time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {n} before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on the yard waits for a hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Act now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Act before tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water still to leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {n} more lots, {litres}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A usual day takes about {litres} from this yard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stronger blue = more water, by tray or meter; hatched = estimated, crossed = doubtful.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed {beds}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds {beds}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YardZone</name>
    <message>
        <source>Open, then shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stronger blue = more water to leave; north up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_OpenFirst</name>
    <message>
        <source>when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>accounts</name>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peaberry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>retained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>receiving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>husk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sorted out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulp, mucilage, juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tests</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ahead</name>
    <message>
        <source>There is nothing to count a range from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical hours must be above zero, and earliest before likely before latest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of lots that never get there must lie between 0 and 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical for this method, from the settings; no reading of this lot says more yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has taken longer than such lots do.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>balance</name>
    <message>
        <source>mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>cards</name>
    <message>
        <source>Being picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>carrying</name>
    <message>
        <source>Choose another folder, or make room.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>against good drying hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>against hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earliest, likely, latest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>counting</name>
    <message>
        <source>Two groups with a value or more each are needed, without gaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One value alone has no range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slope needs three points or more, without gaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All points stand at the same place.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>crop</name>
    <message>
        <source>An estimate needs two trees at least; 250 are asked for an error under a fifth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trees were counted yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>dates</name>
    <message>
        <source>Jan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apr</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jul</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oct</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nov</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dec</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>January</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>February</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>March</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>April</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>June</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>July</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>August</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>September</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>October</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>November</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>December</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fri</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>defects</name>
    <message>
        <source>full black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>partial black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>partial sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dried cherry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fungus damage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foreign matter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large stone, stick or clod</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium stone, stick or clod</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small stone, stick or clod</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insect damage, three holes or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insect damage, under three holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insect damage, one hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insect damage, two holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bored, clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bored, laced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bored, dirty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken, chipped or cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>immature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spotted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bean in parchment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large piece of parchment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium piece of parchment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small piece of parchment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>husk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large piece of husk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium piece of husk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small piece of husk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full imperfection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lesser imperfection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>defects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>primary full defects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>secondary full defects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quakers in 100 g roasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>defective beans by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>black or mouldy beans by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beans of the other type by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sample weight</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>drying</name>
    <message>
        <source>A target moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A starting moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A doubt of the starting moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tray weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A meter reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeats of a meter reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings need instants that rise, each with its value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading lies before the coffee was spread or after now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coffee is not spread yet at that instant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moisture on dry basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An equilibrium moisture on dry basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drying rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A layer resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shape of the drying curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changing weather needs one drive for each step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drying time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vapour pressure deficit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moisture ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A Page exponent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newton</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Henderson and Pabis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>logarithmic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two-term</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Midilli</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wang and Singh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diffusion approach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two-term exponential</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thompson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours of a drying curve must rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A Fourier number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was read: give a moisture or a tray weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlook</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>farm</name>
    <message>
        <source>There is no such row in the notebook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>farm set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a copy that can only be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the other window, then open the season again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ferment</name>
    <message>
        <source>No temperature of the mass: plain clock hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings do not lie on a usual curve; check the probe and take another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH says nothing yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest end lies further ahead than the readings reach back; take it as open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target was met by the readings themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target pH is reached; feel and smell decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lot with fewer than two pH readings teaches nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferment readings need an instant and a value each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferment readings must follow each other in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading lies before the vessel was filled or after now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vessel is not filled yet at that instant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A target pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mass temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight of coffee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dose of yeast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fall of pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of the fall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A curve&apos;s parameters must be above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferment hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight of gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flow of gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A headspace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Purges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A water seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An air pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A Brix reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A specific gravity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Brix rose; take a new sample from several depths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cardinal temperatures must rise, with the best one nearer to the highest than the lowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferment readings need instants that rise, each with its temperature or a gap.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>fermenting</name>
    <message>
        <source>Nothing was read: give a pH, a temperature or a Brix.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>figures</name>
    <message>
        <source>target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squares: tray, hung on the meter; dots: meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squares: tray, from the usual starting moisture; no meter reading it could hang on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dots: meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moisture was not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by tray</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>forms</name>
    <message>
        <source>whole cherry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry cherry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet parchment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry parchment</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>gas</name>
    <message>
        <source>Open outdoors. Gas in here can kill without smell. Never lean in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of gas cannot be below zero.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>grading</name>
    <message>
        <source>A defect count needs its sample&apos;s grams and a count.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>guards</name>
    <message>
        <source>it is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>hulling</name>
    <message>
        <source>A weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of green coffee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parchment per top green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A yield factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hull test needs a sample.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take 250 to 300 g, two or three times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The parts of this sample weigh more than the sample.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of husk</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>keeping</name>
    <message>
        <source>A remark needs words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A remark is a note, a deviation, an event or a lesson.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A correction needs its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A correction must end after it begins.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>learning</name>
    <message>
        <source>from the settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from one own lot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>logger</name>
    <message>
        <source>no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no possible value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two values at one time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No: its clock is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: keep them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No: leave them out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: leave the flat part out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: they are °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No: they are °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it as CSV in the program it comes from, then read that file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy it to this computer&apos;s own disk, close the program that holds it, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It must be a table with a column of dates and times and one of readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the column by hand, or another quantity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it once more with semicolons between the columns, or with a decimal point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which column holds the readings?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may be laid out otherwise than this logger&apos;s last file; choose its columns again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the whole file once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {line}: “{typed}” is no date with its hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {line}: “{typed}” is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {line} has a time and no value.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>methods</name>
    <message>
        <source>washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed, washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>natural</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed whole, dried whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joint lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method not written</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>normals</name>
    <message>
        <source>ripe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ferment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet for accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry for accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed-days for accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outturn</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>notebook</name>
    <message>
        <source>Choose another folder or another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again, or take another stick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name where the difference comes from or goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it, or choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose where it is now, or open a copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a copy to read; nothing can be written here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write on the computer that has the season open, or close it there first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it there, then try again. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was saved before is safe. Check the stick or the disk, or save a copy elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the newest copy from the folder of copies or from the stick; leave this file as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make room on the disk, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check that the folder and the file are still there, and that you may open them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file that this program wrote.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Install the newer version here, or open the file on the other computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {n}, written {at}, was changed by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} rows before the one written {at} are missing: they were taken out by hand.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>notebook_page</name>
    <message>
        <source>Say why the row is struck out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row is struck out already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a row that is not here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sorted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed into the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back from the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used for tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept as a sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air of the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cooled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>news of a sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row is not struck out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brought back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>papers</name>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open outdoors and stand aside. The gas kills without a smell. Never lean in, never open alone in a closed room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wet tarp is heavy: lift it by two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is at work tonight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yard sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing lies on the beds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three depths; beans cooled in the shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open, in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tray g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bean °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If rain comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bed in the open holds coffee.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covered at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>darker: more water, in %; dashed: free; north ↑</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earliest, likely, latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>triangles: where it hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crosses: as read, before the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid marks were measured with an instrument; hollow or hatched ones were computed or estimated; darker on the strip is wetter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No people are named on this sheet, and no place is given by coordinates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(the rest stands in the notebook)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture, % wet basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green coffee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What differed from the method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it in other programs, or choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pay</name>
    <message>
        <source>No picking rate is set, so nothing can be paid by weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the rate for a kilogram in the farm&apos;s settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of a day lies between nothing and one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An amount of money must be above nothing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>picking</name>
    <message>
        <source>the same, kept once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another sack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the one kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this one, correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both: another sack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correction of a slip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such row on the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A correction needs its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rows are right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin it first: g on the page Picking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count needs whole numbers of fruits in its classes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the receiving scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green, on the farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>points</name>
    <message>
        <source>when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from–to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anchor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>logger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as read, before it was corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>portioning</name>
    <message>
        <source>A merge takes two lots at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their blocks differ in organic status; the joint lot has none. Merge?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>river</name>
    <message>
        <source>{grams} {name}, left upwards</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>science</name>
    <message>
        <source>An air temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An air pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A humidity ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vapour pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wind speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mast height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day of the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share of the day with sunshine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day&apos;s lowest temperature is above its highest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day&apos;s sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moisture on dry basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A temperature for this isotherm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A humidity for this isotherm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An anchor table needs two rows or more of humidity and moisture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an anchor table humidity and moisture rise together from row to row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An isotherm needs a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With these figures moisture does not rise with humidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coffee temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight of zero says nothing about moisture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A share</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>season</name>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picking planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beds planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written yet; the season begins with the first sack weighed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>seasons</name>
    <message>
        <source>Free some room on the disk, or name another folder in FARMDESK_DATA.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>selling</name>
    <message>
        <source>A sample cannot be due before it is sent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sample cannot arrive before it was sent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hold must end after it begins.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>setup</name>
    <message>
        <source>The farm needs a name; it stands on every paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone and season stay as they are once something is written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it under the next version.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>peaberry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 14</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sorted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinsed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>defects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lot was not mixed with another.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sieves</name>
    <message>
        <source>A screen number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it is a screen number, type it as a screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hole size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two screens are needed for this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name one screen or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight on a screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sample weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing lies on the screens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat, large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat, medium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat, small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peaberry, large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peaberry, medium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peaberry, small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run of mill (bica corrida)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stage</name>
    <message>
        <source>fresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not skin-dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wilted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rattling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over-dried</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stages</name>
    <message>
        <source>delivered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin-dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wilted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rattling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top grade</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>states</name>
    <message>
        <source>to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>storing</name>
    <message>
        <source>air of the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A joint lot is made of two lots at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of these lots has green coffee to join.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>strip</name>
    <message>
        <source>beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>today</name>
    <message>
        <source>Nothing is due. The yard may rest, and so may you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>you expect no rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method not written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type the sheets</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>watch</name>
    <message>
        <source>not of this lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave this file alone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>weather</name>
    <message>
        <source>Every weather day needs all its columns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather days must follow each other, one row a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good drying hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lowest temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A highest temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mean humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day&apos;s rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An outlook is one of sun, mixed, grey or rain.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
