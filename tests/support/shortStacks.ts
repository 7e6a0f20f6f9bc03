// Jest's own limit is 100 lines, and each `expect` takes a stack in case it fails: that was a third of what some laws took.
Error.stackTraceLimit = 10;
