//! The app in a real browser, from a server that is ended for real.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken step should stop its test

mod answers;
mod carry;
mod controllers;
mod fit;
mod help;
mod hosting;
mod offline;
mod paper;
mod pictures;
mod sending;
mod weather;
mod winter;
mod worksheets;
