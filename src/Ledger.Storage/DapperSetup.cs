// Every query in this project is turned into plain ADO.NET code at build time, so that it works in a native binary.
[module: DapperAot]
