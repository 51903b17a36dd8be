// start
