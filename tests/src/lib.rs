//! Shared by the tests that live beside this folder.
