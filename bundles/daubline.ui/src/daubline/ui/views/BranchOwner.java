package daubline.ui.views;

import daubline.ui.study.OpenStudy;

/** Something that is part of an open study without being an object of its model. */
public interface BranchOwner {

  /** The study it is part of. */
  OpenStudy study();
}
