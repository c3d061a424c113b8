//! The app in a real browser, from a server that is ended for real.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken step should stop its test

mod accessible;
mod advice;
mod answers;
mod carry;
mod contents;
mod controllers;
mod fit;
mod help;
mod hosting;
mod keyboard;
mod offline;
mod paper;
mod pictures;
mod sending;
mod text_size;
mod touches;
mod weather;
mod winter;
mod worksheets;
